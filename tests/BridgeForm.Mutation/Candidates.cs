using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>Every place that may be changed: signs, factors, limits, least and most, comparisons.</summary>
internal sealed class Candidates(SourceProject project, SyntaxTree tree, ConstantUses constants)
{
    // Where lines and words stand on paper and how a page is encoded; of a drawing only what it says in words is a number.
    private static readonly string[] s_onPaper =
        ["src/BridgeForm.Output/DrawingSet/", "src/BridgeForm.Output/Drawing/", "src/BridgeForm.Output/Pdf/", "src/BridgeForm.Output/Svg/"];

    private static readonly string[] s_writers = ["QuantityText", "DisplayUnits", "Numbers", "NumberText", "LengthText"];

    private readonly SemanticModel _model = project.Compilation.GetSemanticModel(tree);
    private readonly string _file = project.Local(tree)!;

    public static IEnumerable<Site> Of(SourceProject project, SyntaxTree tree, ConstantUses constants) =>
        new Candidates(project, tree, constants).Find();

    /// <summary>Type and member around a node, such as Stability.Effective.</summary>
    public static string Member(SyntaxNode node)
    {
        var member = node.Ancestors().OfType<MemberDeclarationSyntax>().FirstOrDefault();
        var type = node.Ancestors().OfType<BaseTypeDeclarationSyntax>().FirstOrDefault()?.Identifier.Text ?? "";
        var name = member switch
        {
            MethodDeclarationSyntax m => m.Identifier.Text,
            PropertyDeclarationSyntax p => p.Identifier.Text,
            FieldDeclarationSyntax f => node.AncestorsAndSelf().OfType<VariableDeclaratorSyntax>()
                .LastOrDefault(v => v.Parent == f.Declaration)?.Identifier.Text,
            OperatorDeclarationSyntax o => "operator" + o.OperatorToken.Text,
            _ => null,
        };
        return name is null ? type : $"{type}.{name}";
    }

    /// <summary>A switch cannot stand where the compiler needs the value.</summary>
    public static bool IsClosed(SyntaxNode node, Func<VariableDeclaratorSyntax, bool> constant) => node.Ancestors().Any(a => a switch
    {
        AttributeSyntax or PatternSyntax or CaseSwitchLabelSyntax or EnumMemberDeclarationSyntax => true,
        ParameterSyntax => true,
        VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax f } v => f.Modifiers.Any(SyntaxKind.ConstKeyword) && !constant(v),
        _ => false,
    });

    private IEnumerable<Site> Find()
    {
        var count = new Dictionary<string, int>(StringComparer.Ordinal);
        var onPaper = s_onPaper.Any(f => _file.StartsWith(f, StringComparison.Ordinal));
        foreach (var node in tree.GetRoot().DescendantNodes().OfType<ExpressionSyntax>())
        {
            if (onPaper && !IsWritten(node))
            {
                continue;
            }

            if (IsClosed(node, v => constants.Converted(ConstantUses.Name(_model.GetDeclaredSymbol(v)!)) is not null))
            {
                continue;
            }

            foreach (var (kind, mutated) in Changes(node))
            {
                var site = SiteAt(node, kind, mutated, 0);
                count.TryGetValue(site.Key, out var before);
                count[site.Key] = before + 1;
                yield return site with { Occurrence = before };
            }
        }
    }

    public Site SiteAt(ExpressionSyntax node, string kind, string mutated, int occurrence) => new(
        _file, Member(node), kind, Site.Collapsed(node.ToString()), mutated, occurrence,
        node.SpanStart, node.GetLocation().GetLineSpan().StartLinePosition.Line + 1)
    {
        Constant = Constant(node),
    };

    private string? Constant(SyntaxNode node) =>
        node.Ancestors().OfType<VariableDeclaratorSyntax>().LastOrDefault() is { Parent.Parent: FieldDeclarationSyntax f } v
        && f.Modifiers.Any(SyntaxKind.ConstKeyword)
            ? ConstantUses.Name(_model.GetDeclaredSymbol(v)!)
            : null;

    private IEnumerable<(string Kind, string Mutated)> Changes(ExpressionSyntax node)
    {
        switch (node)
        {
            case BinaryExpressionSyntax b when IsNumeric(b) && Operators.Swapped(b.Kind()) is { } other:
                yield return (b.Kind() is SyntaxKind.AddExpression or SyntaxKind.SubtractExpression ? "sign" : "factor",
                    $"{b.Left} {other} {Operators.Right(b)}");
                break;
            case BinaryExpressionSyntax b when Operators.Compared(b, IsWhole(b.Left) && IsWhole(b.Right)) is { } other && IsNumber(b.Left):
                yield return ("comparison", $"{b.Left} {other} {b.Right}");
                break;
            case PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.UnaryMinusExpression } minus when IsNumeric(minus):
                yield return ("sign", minus.Operand.ToString());
                break;
            case LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.NumericLiteralExpression) && IsDouble(literal):
                if (Literals.Kind(literal) is { } kind && Literals.Changed(literal) is { } changed)
                {
                    yield return (kind, changed);
                }

                break;
            case InvocationExpressionSyntax call when Operators.LeastOrMost(call) is { } other:
                yield return ("least or most", other);
                break;
        }
    }

    // A part of a value that is turned into words, such as 2 * w in text.Size(2 * w).
    private bool IsWritten(SyntaxNode node) => node.Ancestors().OfType<InvocationExpressionSyntax>()
        .Any(
            call => _model.GetSymbolInfo(call).Symbol?.ContainingType?.Name is { } type
                && s_writers.Contains(type, StringComparer.Ordinal));

    private static bool IsNumber(ITypeSymbol? type) =>
        type?.SpecialType is SpecialType.System_Double or SpecialType.System_Int32 or SpecialType.System_Int64;

    private bool IsNumber(ExpressionSyntax node) => IsNumber(_model.GetTypeInfo(node).Type);

    private bool IsWhole(ExpressionSyntax node) =>
        _model.GetTypeInfo(node).Type?.SpecialType is SpecialType.System_Int32 or SpecialType.System_Int64;

    private bool IsDouble(ExpressionSyntax node) => _model.GetTypeInfo(node).ConvertedType is { } type
        && (type.SpecialType == SpecialType.System_Double
            || type is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } n
            && n.TypeArguments[0].SpecialType == SpecialType.System_Double);

    /// <summary>Numbers, and the vectors and points of the model; no text.</summary>
    private bool IsNumeric(ExpressionSyntax node) => _model.GetTypeInfo(node).Type is { } type
        && (IsNumber(type)
        || (type.IsValueType && type.ContainingNamespace?.ToDisplayString().StartsWith("BridgeForm", StringComparison.Ordinal) == true));
}
