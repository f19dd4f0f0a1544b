using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>A member of a joint with its bolts, in the plane of the frame. Metres.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Stick">Its size.</param>
/// <param name="Wood">Its design values.</param>
/// <param name="Gravity">G of its species.</param>
/// <param name="Grain">Along it.</param>
/// <param name="Bolts">Places of the bolts.</param>
/// <param name="Row">How they are laid out.</param>
/// <param name="Ends">From each bolt along the grain to the end behind it and the end before it.</param>
/// <param name="Loaded">
/// From the line furthest from it to the edge it presses towards: against <c>Grain</c> turned on by a quarter, and along that.
/// </param>
internal sealed record JointMember(
    string Name, JointStick Stick, LumberValues Wood, double Gravity, PlanePoint Grain, ImmutableArray<PlanePoint> Bolts, BoltPattern Row,
    ImmutableArray<(double Behind, double Before)> Ends, (double Below, double Above) Loaded)
{
    /// <summary>Strut and carrier of a joint; null where a table lacks the wood, which is told.</summary>
    public static (JointMember? Strut, JointMember? Carrier, MissingValue? Missing) Build(BridgeParameters parameters, PlateLayout layout)
    {
        var frames = parameters.Frames;
        var sticks = JointSticks.Of(frames, layout.Place);
        var isPost = layout.Place == JointPlace.PostFoot;
        var (strutStock, strutSection) = isPost
            ? (frames.Post.Stock, frames.Post.Section) : (frames.Brace.Stock, frames.Brace.Section);
        var (carrierStock, carrierSection) = sticks.CarrierIsPost
            ? (frames.Post.Stock, frames.Post.Section) : (frames.Base.Stock, frames.Base.Section);
        var (strutWood, carrierWood) = (
            LumberValues.Find(parameters, strutStock, strutSection), LumberValues.Find(parameters, carrierStock, carrierSection));
        if (strutWood is null || carrierWood is null)
        {
            return (null, null, strutWood is null
                ? LumberValues.Missing(parameters, strutStock, strutSection)
                : LumberValues.Missing(parameters, carrierStock, carrierSection));
        }

        var plates = layout.Plates;
        var length = isPost ? frames.Post.Length : (frames.Brace.Length + BraceGeometry.ShortEdge(frames.Post, frames.Brace)) / 2;
        var half = (sticks.Strut.Width / 2) + plates.Strut.Half;

        // A slanting cut leaves less beside the first bolts, on the side on which it lies.
        var slant = layout.Into.From(new PlanePoint(0, 0), layout.Across);
        var left = Math.Abs(slant) > Tolerances.RoundOff
            ? Math.Min(half, layout.Strut.Take(plates.Strut.Lines).Max(b => Math.Abs(b.From(layout.Meets, layout.Into) / slant)))
            : half;
        var strut = new JointMember(
            sticks.Strut.Name, sticks.Strut, strutWood, GravityOf(parameters, strutStock), layout.Along, layout.Strut, plates.Strut,
            [.. layout.Strut.Select(layout.FromCut).Select(cut => (cut, length - cut))],
            slant > 0 ? (half, left) : (left, half));
        var (shallow, deep) = (plates.Depth + plates.Carrier.Half, sticks.Carrier.Width - plates.Depth + plates.Carrier.Half);

        // A quarter turn on from outward is up, from up a post inward.
        var carrier = new JointMember(
            sticks.Carrier.Name, sticks.Carrier, carrierWood, GravityOf(parameters, carrierStock), layout.CarrierAlong, layout.Carrier,
            plates.Carrier, CarrierEnds(frames, layout), sticks.CarrierIsPost ? (shallow, deep) : (deep, shallow));
        return (strut, carrier, null);
    }

    /// <summary>Left of the section beside the bolts that lie side by side, m².</summary>
    public double NetArea => Stick.Thickness * (Stick.Width - (Row.Lines * Row.Hole));

    /// <summary>From the group to the nearest end of the member, metres.</summary>
    public double NearestEnd => Ends.Min(e => Math.Min(e.Behind, e.Before));

    internal static double GravityOf(BridgeParameters parameters, string stock)
    {
        var key = parameters.StockNamed(stock).Species;
        return parameters.Species.Concat(SpeciesTable.All).First(s => string.Equals(s.Key, key, StringComparison.Ordinal)).SpecificGravity;
    }

    private static ImmutableArray<(double Behind, double Before)> CarrierEnds(FrameParameters frames, PlateLayout layout)
    {
        if (layout.Place != JointPlace.BraceHead)
        {
            var half = frames.Base.Length / 2;
            return [.. layout.Carrier.Select(b => (half + b.Z, half - b.Z))];
        }

        var foot = PlateLayout.Build(frames, JointPlace.PostFoot, layout.Plates);
        return [.. layout.Carrier.Select(foot.FromCut).Select(cut => (cut, frames.Post.Length - cut))];
    }
}
