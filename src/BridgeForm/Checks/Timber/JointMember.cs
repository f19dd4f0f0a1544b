using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Materials;
using BridgeForm.Project;

namespace BridgeForm.Checks.Timber;

/// <summary>A member of a joint with its bolts, in the plane of the frame. Metres.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Stick">Its size.</param>
/// <param name="Wood">Its design values.</param>
/// <param name="Gravity">G of its species.</param>
/// <param name="Grain">Along it.</param>
/// <param name="Bolts">Places of the bolts.</param>
/// <param name="Row">How they are spaced.</param>
/// <param name="Low">From the first bolt to the end behind it, along the grain.</param>
/// <param name="High">From the last bolt to the end before it.</param>
/// <param name="Loaded">From the row to the edge it presses towards: against <c>Grain</c> turned on by a quarter, and along that.</param>
internal sealed record JointMember(
    string Name, JointStick Stick, LumberValues Wood, double Gravity, PlanePoint Grain, ImmutableArray<PlanePoint> Bolts, BoltRow Row,
    double Low, double High, (double Below, double Above) Loaded)
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
        var reach = plates.End + ((plates.Strut.Count - 1) * plates.Strut.Spacing);
        var half = sticks.Strut.Width / 2;
        var strut = new JointMember(
            sticks.Strut.Name, sticks.Strut, strutWood, GravityOf(parameters, strutStock), layout.Along, layout.Strut, plates.Strut,
            plates.End, length - reach, (half, half));
        var (low, high) = CarrierEnds(frames, layout);
        var deep = sticks.Carrier.Width - plates.Depth;

        // A quarter turn on from outward is up, from up a post inward.
        var carrier = new JointMember(
            sticks.Carrier.Name, sticks.Carrier, carrierWood, GravityOf(parameters, carrierStock), layout.CarrierAlong, layout.Carrier,
            plates.Carrier, low, high, sticks.CarrierIsPost ? (plates.Depth, deep) : (deep, plates.Depth));
        return (strut, carrier, null);
    }

    /// <summary>Left of the section beside the bolts of one row, m².</summary>
    public double NetArea(double hole) => Stick.Thickness * (Stick.Width - hole);

    private static double GravityOf(BridgeParameters parameters, string stock)
    {
        var key = parameters.StockNamed(stock).Species;
        return parameters.Species.Concat(SpeciesTable.All).First(s => string.Equals(s.Key, key, StringComparison.Ordinal)).SpecificGravity;
    }

    private static (double Low, double High) CarrierEnds(FrameParameters frames, PlateLayout layout)
    {
        if (layout.Place != JointPlace.BraceHead)
        {
            var half = frames.Base.Length / 2;
            return (half + layout.Carrier[0].Z, half - layout.Carrier[^1].Z);
        }

        var foot = PlateLayout.Build(frames, JointPlace.PostFoot, layout.Plates);
        return (
            layout.Carrier[0].From(foot.Meets, foot.Along),
            frames.Post.Length - layout.Carrier[^1].From(foot.Meets, foot.Along));
    }
}
