using Mono.Cecil;

namespace BridgeForm.Tests.Architecture;

/// <summary>A type of ours; nested ones count as the one around them.</summary>
internal readonly record struct UsedType(string Namespace, string Name)
{
    public override string ToString() => $"{Namespace}.{Name}";
}

/// <summary>One type uses another, anywhere: base, member, attribute, generic argument, body of a method.</summary>
internal readonly record struct TypeUse(UsedType From, UsedType To);

/// <summary>Uses among the types of compiled assemblies. What the compiler puts in as a constant leaves no trace there.</summary>
internal sealed class TypeUses
{
    private readonly HashSet<UsedType> _ours;
    private readonly HashSet<TypeUse> _uses = [];

    private TypeUses(IReadOnlyCollection<TypeDefinition> types)
    {
        _ours = [.. types.Select(Outer)];
        foreach (var type in types)
        {
            Walk(Outer(type), type);
        }
    }

    /// <summary>Every use of a type by another one.</summary>
    /// <param name="assemblies">Paths of assemblies; types of others do not count.</param>
    public static IReadOnlyCollection<TypeUse> In(params string[] assemblies)
    {
        ModuleDefinition[] modules = [.. assemblies.Select(ModuleDefinition.ReadModule)];
        try
        {
            return new TypeUses([.. modules.SelectMany(m => m.Types).Where(t => t.Namespace.Length > 0)])._uses;
        }
        finally
        {
            foreach (var module in modules)
            {
                module.Dispose();
            }
        }
    }

    private static UsedType Outer(TypeReference type)
    {
        while (type.DeclaringType is { } around)
        {
            type = around;
        }

        return new UsedType(type.Namespace, type.Name);
    }

    private void Walk(UsedType from, TypeDefinition type)
    {
        Add(from, type.BaseType);
        Add(from, type.CustomAttributes.Select(a => a.AttributeType));
        Add(from, type.Interfaces.Select(i => i.InterfaceType));
        Add(from, type.GenericParameters.SelectMany(g => g.Constraints).Select(c => c.ConstraintType));
        Add(from, type.Fields.Select(f => f.FieldType));
        Add(from, type.Properties.Select(p => p.PropertyType));
        foreach (var method in type.Methods)
        {
            Signature(from, method);
            Body(from, method);
        }

        foreach (var nested in type.NestedTypes)
        {
            Walk(from, nested);
        }
    }

    private void Body(UsedType from, MethodDefinition method)
    {
        if (!method.HasBody)
        {
            return;
        }

        Add(from, method.Body.Variables.Select(v => v.VariableType));
        Add(from, method.Body.ExceptionHandlers.Select(h => h.CatchType));
        foreach (var operand in method.Body.Instructions.Select(i => i.Operand))
        {
            switch (operand)
            {
                case MethodReference called: Signature(from, called); break;
                case FieldReference field: Add(from, [field.DeclaringType, field.FieldType]); break;
                case TypeReference type: Add(from, type); break;
            }
        }
    }

    private void Signature(UsedType from, MethodReference method)
    {
        if (method is GenericInstanceMethod generic)
        {
            Add(from, generic.GenericArguments);
        }

        Add(from, [method.DeclaringType, method.ReturnType]);
        Add(from, method.Parameters.Select(p => p.ParameterType));
    }

    private void Add(UsedType from, IEnumerable<TypeReference> types)
    {
        foreach (var type in types)
        {
            Add(from, type);
        }
    }

    private void Add(UsedType from, TypeReference? type)
    {
        switch (type)
        {
            case null or GenericParameter:
                break;
            case GenericInstanceType generic:
                Add(from, generic.ElementType);
                Add(from, generic.GenericArguments);
                break;
            case IModifierType modified:
                Add(from, [modified.ElementType, modified.ModifierType]);
                break;
            case TypeSpecification made:
                Add(from, made.ElementType);
                break;
            default:
                var to = Outer(type);
                if (to != from && _ours.Contains(to))
                {
                    _uses.Add(new TypeUse(from, to));
                }

                break;
        }
    }
}
