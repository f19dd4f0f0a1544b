using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>What operators and calls are changed to.</summary>
internal static class Operators
{
    private static readonly Dictionary<string, string> Calls = new(StringComparer.Ordinal)
    {
        ["Min"] = "Max",
        ["Max"] = "Min",
        ["MinBy"] = "MaxBy",
        ["MaxBy"] = "MinBy",
    };

    /// <summary>The opposite sign or factor.</summary>
    public static string? Swapped(SyntaxKind kind) => kind switch
    {
        SyntaxKind.AddExpression => "-",
        SyntaxKind.SubtractExpression => "+",
        SyntaxKind.MultiplyExpression => "/",
        SyntaxKind.DivideExpression => "*",
        _ => null,
    };

    /// <summary>A right side that stays one operand after the change.</summary>
    public static string Right(BinaryExpressionSyntax node) => $"({node.Right})";

    /// <summary>
    /// Whole numbers, and anything held against a plain zero: whether the end belongs to it. Other numbers meet their end by
    /// chance alone, so there the comparison turns round.
    /// </summary>
    public static string? Compared(BinaryExpressionSyntax node, bool whole)
    {
        var endMatters = whole || node.Right is LiteralExpressionSyntax { Token.ValueText: "0" };
        return (node.Kind(), endMatters) switch
        {
            (SyntaxKind.LessThanExpression, true) => "<=",
            (SyntaxKind.LessThanOrEqualExpression, true) => "<",
            (SyntaxKind.GreaterThanExpression, true) => ">=",
            (SyntaxKind.GreaterThanOrEqualExpression, true) => ">",
            (SyntaxKind.LessThanExpression, false) => ">=",
            (SyntaxKind.LessThanOrEqualExpression, false) => ">",
            (SyntaxKind.GreaterThanExpression, false) => "<=",
            (SyntaxKind.GreaterThanOrEqualExpression, false) => "<",
            _ => null,
        };
    }

    /// <summary>The call with Min and Max exchanged.</summary>
    public static string? LeastOrMost(InvocationExpressionSyntax call) =>
        call.Expression is MemberAccessExpressionSyntax access && Calls.TryGetValue(access.Name.Identifier.Text, out var other)
            ? $"{access.Expression}.{other}{call.ArgumentList}"
            : null;
}
