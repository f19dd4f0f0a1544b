using System.Text;
using Mono.Cecil;

namespace BridgeForm.Tests.Architecture;

/// <summary>Public types and members of an assembly, a line each, sorted: what others may build upon.</summary>
internal static class PublicApi
{
    /// <summary>Text with LF line ends.</summary>
    public static string Of(params string[] assemblies)
    {
        var text = new StringBuilder();
        foreach (var path in assemblies)
        {
            using var module = ModuleDefinition.ReadModule(path);
            foreach (var type in module.Types.SelectMany(WithNested).Where(IsPublic).OrderBy(t => t.FullName, StringComparer.Ordinal))
            {
                text.Append(Kind(type)).Append(' ').Append(type.FullName).Append('\n');
                foreach (var member in Members(type).Order(StringComparer.Ordinal))
                {
                    text.Append("  ").Append(member).Append('\n');
                }
            }
        }

        return text.ToString();
    }

    private static IEnumerable<TypeDefinition> WithNested(TypeDefinition type) => type.NestedTypes.SelectMany(WithNested).Prepend(type);

    private static bool IsPublic(TypeDefinition type) => type.IsPublic || (type.IsNestedPublic && IsPublic(type.DeclaringType));

    private static string Kind(TypeDefinition type) =>
        type.IsInterface
            ? "interface"
            : type.IsEnum
            ? "enum"
            : type.IsValueType
            ? "struct"
            : type.BaseType?.FullName == "System.MulticastDelegate"
            ? "delegate"
            : "class";

    // What the compiler adds to a record says nothing that the record does not.
    private static IEnumerable<string> Members(TypeDefinition type) =>
    [
        .. type.Fields.Where(f => f.IsPublic && !f.IsSpecialName).Select(f => $"{Short(f.FieldType)} {f.Name}"),
        .. type.Properties.Where(p => p.GetMethod?.IsPublic == true)
            .Select(p => $"{Short(p.PropertyType)} {p.Name} {{ get;{(p.SetMethod?.IsPublic == true ? " set;" : "")} }}"),
        .. type.Methods
            .Where(
                m => m.IsPublic && !m.IsGetter && !m.IsSetter
                    && !m.CustomAttributes.Any(a => a.AttributeType.Name == "CompilerGeneratedAttribute"))
            .Select(m => $"{Short(m.ReturnType)} {m.Name}({string.Join(", ", m.Parameters.Select(p => Short(p.ParameterType)))})"),
    ];

    private static string Short(TypeReference type) => type switch
    {
        GenericInstanceType generic =>
            $"{generic.ElementType.Name.Split('`')[0]}<{string.Join(", ", generic.GenericArguments.Select(Short))}>",
        IModifierType modified => Short(modified.ElementType),
        ByReferenceType byReference => Short(byReference.ElementType) + "&",
        ArrayType array => Short(array.ElementType) + "[]",
        _ => type.Name,
    };
}
