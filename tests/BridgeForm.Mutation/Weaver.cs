using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>Puts the switch at every chosen place of a file: original ? mutated, and makes properties of the constants it needs.</summary>
/// <param name="sites">Places of this file with their numbers, by where they begin and what they read.</param>
/// <param name="isConverted">Whether a constant field becomes a property.</param>
internal sealed class Weaver(
    ILookup<(int Start, string Text), (int Number, Site Site)> sites, Func<VariableDeclaratorSyntax, bool> isConverted)
    : CSharpSyntaxRewriter
{
    /// <summary>Numbers of the places that were found.</summary>
    public HashSet<int> Woven { get; } = [];

    public override SyntaxNode? Visit(SyntaxNode? node)
    {
        var visited = base.Visit(node);
        if (node is not ExpressionSyntax || visited is not ExpressionSyntax inner)
        {
            return visited;
        }

        foreach (var (number, site) in sites[(node.SpanStart, Site.Collapsed(node.ToString()))])
        {
            // A parenthesis may begin and read alike only with its own text; each number is woven once, at the outermost node.
            if (!Woven.Add(number))
            {
                continue;
            }

            var plain = inner.WithoutTrivia();
            inner = SyntaxFactory.ParseExpression($"({Switch.Call(number)} ? ({site.Mutated}) : ({plain.ToFullString()}))")
                .WithTriviaFrom(inner);
        }

        return inner;
    }

    public override SyntaxNode? VisitFieldDeclaration(FieldDeclarationSyntax node)
    {
        var variable = node.Declaration.Variables[0];
        var visited = (FieldDeclarationSyntax)base.VisitFieldDeclaration(node)!;
        if (node.Declaration.Variables.Count > 1 || !node.Modifiers.Any(SyntaxKind.ConstKeyword) || !isConverted(variable))
        {
            return visited;
        }

        var modifiers = string.Join(' ', node.Modifiers.Where(m => !m.IsKind(SyntaxKind.ConstKeyword)).Select(m => m.Text));
        var value = visited.Declaration.Variables[0].Initializer!.Value.ToFullString();
        return SyntaxFactory.ParseMemberDeclaration(
                $"{modifiers} static {node.Declaration.Type} {variable.Identifier.Text} => {value};")!
            .WithTrailingTrivia(SyntaxFactory.LineFeed);
    }

    public override SyntaxNode? VisitLocalDeclarationStatement(LocalDeclarationStatementSyntax node)
    {
        var before = Woven.Count;
        var visited = (LocalDeclarationStatementSyntax)base.VisitLocalDeclarationStatement(node)!;
        return node.IsConst && Woven.Count > before
            ? visited.WithModifiers(SyntaxFactory.TokenList(visited.Modifiers.Where(m => !m.IsKind(SyntaxKind.ConstKeyword))))
            : visited;
    }
}
