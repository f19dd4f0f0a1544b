using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// What shears a base beside the bolts of a joint while people push the guard: the deck, what is on it, and the push, in the cases by
/// which the base's own shear is looked at. Bolts that pull across the grain split a member that is sheared there already (NDS 3.4.3.3 and
/// EN 1995-1-1 8.1.4 compare the member's shear beside them, not the joint's own force).
/// </summary>
/// <param name="Cases">Those in which people push, of interior frames and of end frames.</param>
internal sealed record JointShear(ImmutableArray<BaseCase> Cases)
{
    /// <summary>By how much they are taken too large, for what is not known of a bridge that is only tried.</summary>
    public double Times { get; init; } = 1;

    /// <summary>Of a bridge as it is checked.</summary>
    public static JointShear Of(CheckContext context) =>
        Of(context.Layout, BaseLoads.Of(context.Layout, context.Masses, context.Ropework));

    /// <summary>Of a bridge as it would be.</summary>
    /// <param name="layout">Where everything lies, with its parameters.</param>
    /// <param name="loads">Null for a bridge without interior frames.</param>
    public static JointShear Of(BridgeLayout layout, BaseLoads? loads) =>
        new([.. BaseCases.List(layout, loads).Where(c => c.Push is not null), .. EndBase.List(layout)]);

    /// <summary>
    /// The largest shear from the first of a joint's bolts to the last, and where its strut stands, newtons; under the same push, with the
    /// brace's force in the same place.
    /// </summary>
    public (double Value, string Case) Beside(JointLoad load, PlateLayout layout)
    {
        var edge = layout.Plates.Carrier.Hole / 2;
        var (from, to) = (
            Math.Min(layout.Carrier.Min(b => b.Z), load.At.Z) - edge, Math.Max(layout.Carrier.Max(b => b.Z), load.At.Z) + edge);
        return Cases
            .Where(c => string.Equals(c.Push!.Name, load.Push.Name, StringComparison.Ordinal)
                && string.Equals(c.After, load.Frame.After, StringComparison.Ordinal))
            .Select(c => (Value: Times * c.Beam.Places(from, to).Max(z => Math.Abs(c.Beam.Shear(z))), c.Name))
            .DefaultIfEmpty((0, ""))
            .MaxBy(c => c.Item1);
    }
}
