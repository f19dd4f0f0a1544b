using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>
/// Which constants may become properties, so that a switch can stand in them: those that nothing needs while compiling, such
/// as a pattern, an attribute or a parameter's default. A constant made from another one follows it.
/// </summary>
internal sealed class ConstantUses
{
    private readonly HashSet<string> _needed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, HashSet<string>> _madeInto = new(StringComparer.Ordinal);

    public ConstantUses(IEnumerable<SourceProject> projects)
    {
        var all = projects.ToArray();
        var names = all.SelectMany(p => p.Compilation.SyntaxTrees).SelectMany(Fields).Select(v => v.Identifier.Text).ToHashSet(
            StringComparer.Ordinal);
        foreach (var compilation in all.Select(p => p.Compilation))
        {
            foreach (var tree in compilation.SyntaxTrees)
            {
                var uses = tree.GetRoot().DescendantNodes().OfType<IdentifierNameSyntax>().Where(i => names.Contains(i.Identifier.Text));
                var model = new Lazy<SemanticModel>(() => compilation.GetSemanticModel(tree));
                foreach (var use in uses)
                {
                    Take(use, model);
                }
            }
        }
    }

    /// <summary>Constants to convert together with this one; null when one of them cannot be.</summary>
    public IReadOnlySet<string>? Converted(string constant)
    {
        var (all, open) = (new HashSet<string>(StringComparer.Ordinal), new Stack<string>([constant]));
        while (open.TryPop(out var next))
        {
            if (_needed.Contains(next))
            {
                return null;
            }

            if (all.Add(next) && _madeInto.TryGetValue(next, out var into))
            {
                into.ToList().ForEach(open.Push);
            }
        }

        return all;
    }

    public static string Name(ISymbol field) => $"{field.ContainingType.ToDisplayString()}.{field.Name}";

    /// <summary>Constant fields of a tree.</summary>
    public static IEnumerable<VariableDeclaratorSyntax> Fields(SyntaxTree tree) => tree.GetRoot().DescendantNodes()
        .OfType<FieldDeclarationSyntax>()
        .Where(f => f.Modifiers.Any(SyntaxKind.ConstKeyword))
        .SelectMany(f => f.Declaration.Variables);

    private void Take(IdentifierNameSyntax use, Lazy<SemanticModel> model)
    {
        var place = Place(use);
        if (place is null || model.Value.GetSymbolInfo(use).Symbol is not IFieldSymbol { IsConst: true } field)
        {
            return;
        }

        if (place is VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax } other
            && model.Value.GetDeclaredSymbol(other) is { } into)
        {
            if (!_madeInto.TryGetValue(Name(field), out var list))
            {
                _madeInto[Name(field)] = list = new(StringComparer.Ordinal);
            }

            list.Add(Name(into));
            return;
        }

        _needed.Add(Name(field));
    }

    /// <summary>What needs the constant's value while compiling; null when nothing does.</summary>
    private static SyntaxNode? Place(SyntaxNode use) => use.Ancestors().FirstOrDefault(a => a switch
    {
        AttributeSyntax or PatternSyntax or CaseSwitchLabelSyntax or ParameterSyntax or EnumMemberDeclarationSyntax => true,
        VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax f } => f.Modifiers.Any(SyntaxKind.ConstKeyword),
        LocalDeclarationStatementSyntax l => l.IsConst,
        _ => false,
    });
}
