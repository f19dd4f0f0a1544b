using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>Numbers written in the source.</summary>
internal static class Literals
{
    // A quarter more is far beyond rounding and still plausible to whoever reads the result.
    private const double More = 1.25;

    // Numbers below this are tolerances: how large exactly is nobody's business, how large about is.
    private const double TolerancesBelow = 1e-4;

    private const double MuchMore = 1000;

    /// <summary>Factor or limit; null for a number that is neither, such as a place on a page or an exponent.</summary>
    public static string? Kind(LiteralExpressionSyntax literal) => literal.Parent switch
    {
        BinaryExpressionSyntax b when b.IsKind(SyntaxKind.MultiplyExpression) || b.IsKind(SyntaxKind.DivideExpression) => "factor",
        BinaryExpressionSyntax b when b.Kind() is SyntaxKind.LessThanExpression or SyntaxKind.LessThanOrEqualExpression
            or SyntaxKind.GreaterThanExpression or SyntaxKind.GreaterThanOrEqualExpression => "limit",
        EqualsValueClauseSyntax { Parent: VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax } } => "limit",
        ArrowExpressionClauseSyntax or SwitchExpressionArmSyntax => "limit",
        _ => null,
    };

    /// <summary>The number a quarter larger; null for nothing.</summary>
    public static string? Changed(LiteralExpressionSyntax literal)
    {
        var value = Convert.ToDouble(literal.Token.Value, CultureInfo.InvariantCulture);
        var changed = value * (value < TolerancesBelow ? MuchMore : More);
        return value > 0 ? changed.ToString("R", CultureInfo.InvariantCulture) + "d" : null;
    }
}
