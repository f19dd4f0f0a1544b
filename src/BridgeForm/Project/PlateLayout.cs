using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Where bolts and plates of a joint lie, in the plane of the frame, right side: z outward from the bridge's middle, n up from the
/// base's top. Metres.
/// </summary>
public sealed record PlateLayout
{
    private PlateLayout(JointPlace place, PlateJoint plates, PlanePoint meets, PlanePoint along, PlanePoint carrierAlong, PlanePoint into)
    {
        (Place, Plates, Meets, Along, CarrierAlong, Into) = (place, plates, meets, along, carrierAlong, into);
        var first = meets.Plus(along, plates.End + ((plates.Strut.Count - 1) * plates.Strut.Spacing / 2));
        Strut = Lay(first, along, Across, plates.Strut);

        // On the strut's axis, drawn on into the carrier: what pulls along it has no lever.
        var zero = new PlanePoint(0, 0);
        var middle = meets.Plus(along, plates.Depth / along.From(zero, into)).Plus(carrierAlong, plates.Shift);
        Carrier = Lay(middle, carrierAlong, into, plates.Carrier);
        var (low, high) = Range(along);
        var (left, right) = Range(Across);
        Needed = (high - low, right - left);
        Middle = meets.Plus(along, (low + high) / 2).Plus(Across, (left + right) / 2);
    }

    /// <summary>Which joint.</summary>
    public JointPlace Place { get; }

    /// <summary>What the file says of it.</summary>
    public PlateJoint Plates { get; }

    /// <summary>Where the strut's axis meets the face it ends on.</summary>
    public PlanePoint Meets { get; }

    /// <summary>Along the strut, away from its cut.</summary>
    public PlanePoint Along { get; }

    /// <summary>Along the carrier: outward on a base, up a post.</summary>
    public PlanePoint CarrierAlong { get; }

    /// <summary>Into the carrier, square to the face that the strut ends on.</summary>
    public PlanePoint Into { get; }

    /// <summary>Across the plate.</summary>
    public PlanePoint Across => Along.Turned;

    /// <summary>Bolts in the strut, from its cut on; those of two lines that lie side by side follow each other.</summary>
    public ImmutableArray<PlanePoint> Strut { get; }

    /// <summary>Bolts in the carrier, inner or lower ones first; of two lines the nearer before the deeper.</summary>
    public ImmutableArray<PlanePoint> Carrier { get; }

    /// <summary>Least length and width of a plate that holds all bolts.</summary>
    public (double Length, double Width) Needed { get; }

    /// <summary>The plate's middle.</summary>
    public PlanePoint Middle { get; }

    /// <summary>The plate's corners, one after another around it.</summary>
    public ImmutableArray<PlanePoint> Corners => [Corner(-1, -1), Corner(1, -1), Corner(1, 1), Corner(-1, 1)];

    /// <summary>The layout of a joint.</summary>
    public static PlateLayout Build(FrameParameters frames, JointPlace place, PlateJoint plates)
    {
        var (post, brace) = (frames.Post, frames.Brace);
        var (up, down) = (Direction(post.Lean), Direction(-brace.Lean));
        var braceFoot = new PlanePoint(brace.Foot - (brace.Section.Width / 2 / Elementary.Cos(brace.Lean)), 0);
        var (outward, downward) = (new PlanePoint(1, 0), new PlanePoint(0, -1));
        if (place == JointPlace.PostFoot)
        {
            var foot = new PlanePoint(post.Foot + (post.Section.Width / 2 / Elementary.Cos(post.Lean)), 0);
            return new PlateLayout(place, plates, foot, up, outward, downward);
        }

        return place == JointPlace.BraceFoot
            ? new PlateLayout(place, plates, braceFoot, down, outward, downward)
            : new PlateLayout(
                place, plates, Head(post, brace, braceFoot), new PlanePoint(-down.Z, -down.N), up, up.Turned);
    }

    /// <summary>How far a place is from the strut's cut, along its grain; from the post's foot, drawn on, for a joint of that.</summary>
    public double FromCut(PlanePoint place) => place.From(Meets, Into) / Along.From(new PlanePoint(0, 0), Into);

    /// <summary>All bolts with their members' patterns.</summary>
    public IEnumerable<(PlanePoint Place, BoltPattern Pattern)> Bolts =>
        Strut.Select(b => (b, Plates.Strut)).Concat(Carrier.Select(b => (b, Plates.Carrier)));

    private static ImmutableArray<PlanePoint> Lay(PlanePoint middle, PlanePoint along, PlanePoint across, BoltPattern pattern) =>
    [
        .. Enumerable.Range(0, pattern.Total).Select(i => middle
            .Plus(along, ((i / pattern.Lines) - ((pattern.Count - 1) / 2.0)) * pattern.Spacing)
            .Plus(across, ((i % pattern.Lines) - ((pattern.Lines - 1) / 2.0)) * pattern.Apart)),
    ];

    private PlanePoint Corner(int along, int across) =>
        Middle.Plus(Along, along * Plates.Length / 2).Plus(Across, across * Plates.Width / 2);

    // Where the brace's axis meets the post's outer face.
    private static PlanePoint Head(PostParameters post, BraceParameters brace, PlanePoint foot)
    {
        var face = BraceGeometry.PostOuterFoot(post);
        var height = (foot.Z - face) / (Elementary.Tan(post.Lean) + Elementary.Tan(brace.Lean));
        return new PlanePoint(face + (height * Elementary.Tan(post.Lean)), height);
    }

    private static PlanePoint Direction(double lean) => new(Elementary.Sin(lean), Elementary.Cos(lean));

    // Of a plate that keeps its least edge around every bolt.
    private (double Low, double High) Range(PlanePoint direction) => (
        Bolts.Min(b => b.Place.From(Meets, direction) - SteelPlate.LeastEdge(b.Pattern.Bolt)),
        Bolts.Max(b => b.Place.From(Meets, direction) + SteelPlate.LeastEdge(b.Pattern.Bolt)));
}
