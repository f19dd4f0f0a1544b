using BridgeForm.Checks;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>Where a case lies beside a limit that is a number.</summary>
public enum Side
{
    /// <summary>Anywhere.</summary>
    Far,

    /// <summary>Holds, by less than a thousandth of the limit.</summary>
    Within,

    /// <summary>Does not hold, by less than a thousandth of the limit.</summary>
    Beyond,
}

/// <summary>
/// Says that a case gives a check exactly this status. It stands on a static method that returns a <see cref="Proof"/>, in any
/// class of the tests. The method takes nothing, or one number: demand over limit that its bridge is to have, 0.9995 within
/// the limit and 1.0005 beyond it. <see cref="CatalogueTests"/> runs every such method and compares what it gives with what
/// stands here, so a mark without a case behind it fails.
/// </summary>
/// <param name="id">Id of a declared check.</param>
/// <param name="status">One of the statuses that it declares.</param>
/// <param name="side">Where a limit is a number, on which side of it the case lies closely.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ProvesAttribute(string id, CheckStatus status, Side side = Side.Far) : Attribute
{
    private const double Closely = 0.0005;

    public string Id => id;

    public CheckStatus Status => status;

    public Side Side => side;

    /// <summary>Demand over limit to aim at.</summary>
    public double Share => side switch
    {
        Side.Within => 1 - Closely,
        Side.Beyond => 1 + Closely,
        _ => 1,
    };
}
