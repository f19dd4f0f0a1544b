using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Ropes;

/// <summary>Weights that stand on the ropes, and how high.</summary>
/// <param name="Weight">Newtons.</param>
/// <param name="Moment">Sum of weight × height over the ropes' axes, N·m.</param>
internal readonly record struct StandingWeight(double Weight, double Moment)
{
    /// <summary>How high people's weight lies over the deck, metres: common practice, no source.</summary>
    public const double PeopleOverDeck = 1.0;

    /// <summary>Height of all of it over the ropes' axes, metres.</summary>
    public double Height => Moment / Weight;

    /// <summary>Both together.</summary>
    public static StandingWeight operator +(StandingWeight a, StandingWeight b) => new(a.Weight + b.Weight, a.Moment + b.Moment);

    /// <summary>So many times as much at the same height.</summary>
    public StandingWeight Times(double share) => new(share * Weight, share * Moment);

    /// <summary>
    /// What hangs on the ropes of the empty bridge: interior frames with their packers and hardware, the bays (of the first
    /// and last one half, the other half lies on the landings), and the ropes' own weight at height 0.
    /// </summary>
    public static StandingWeight Dead(CheckContext context)
    {
        var layout = context.Layout;
        var rope = 2 * context.Rope.WeightPerLength * context.Rope.Segments.Sum(s => s.UnstressedLength);
        var sum = new StandingWeight(rope, 0);
        for (var i = 1; i < layout.Bays; i++)
        {
            var (node, slope) = (layout.Poses[i].Node, Math.Tan(layout.Poses[i].Slope));
            sum += Of(context, Members.Frame(layout, i), 1, node, slope) + Hardware(context, i);
        }

        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            var chord = layout.Poses[bay].Node - layout.Poses[bay - 1].Node;
            var share = bay == 1 || bay == layout.Bays ? 0.5 : 1;
            sum += Of(context, Members.Bay(layout, bay), share, layout.Poses[bay].Node, chord.Y / chord.X);
        }

        return sum;
    }

    /// <summary>A load on the deck's clear width between the first and the last interior frame's half bays.</summary>
    /// <param name="context">The bridge.</param>
    /// <param name="pressure">Pa in plan.</param>
    /// <param name="overDeck">Its height over the deck's surface, metres.</param>
    public static StandingWeight Area(CheckContext context, double pressure, double overDeck)
    {
        var layout = context.Layout;
        var perLength = pressure * DeckWidth.BetweenPosts(context.Parameters);
        var sum = default(StandingWeight);
        for (var i = 1; i < layout.Bays; i++)
        {
            var weight = perLength * (layout.Poses[i + 1].Node.X - layout.Poses[i - 1].Node.X) / 2;
            var deck = Over(layout.Poses[i].Node, Math.Tan(layout.Poses[i].Slope), layout.Deck.Points[i]);
            sum += new StandingWeight(weight, weight * (deck + layout.Parameters.Deck.Thickness + overDeck));
        }

        return sum;
    }

    private static StandingWeight Hardware(CheckContext context, int frame)
    {
        var weight = context.Parameters.Frames.HardwareMass * BridgeMasses.Gravity;
        return new StandingWeight(weight, weight * context.Layout.Levels[frame].Top);
    }

    private static StandingWeight Of(CheckContext context, MemberGroup group, double share, Vector3d node, double slope)
    {
        var parameters = context.Parameters;
        var drilled = parameters.Frames.Holes.Length > 0;
        var sum = default(StandingWeight);
        foreach (var member in group.Members)
        {
            var weight = share * MemberVolume.Of(member.Shape, drilled)
                * parameters.StockNamed(member.Stock).Density.InService * BridgeMasses.Gravity;
            sum += new StandingWeight(weight, weight * Over(node, slope, Middle(member)));
        }

        return sum;
    }

    /// <summary>Middle of the stick's axis: bevels of its ends, channels and tapers move the true centre by millimetres.</summary>
    private static Vector3d Middle(Member member)
    {
        var (near, far) = member.Shape.LengthRange();
        return member.Placement.ToWorld(new Vector3d((near + far) / 2, 0, 0));
    }

    /// <summary>How far a point lies straight above the rope's chord through a node, metres.</summary>
    private static double Over(Vector3d node, double slope, Vector3d point) =>
        point.Y - node.Y - (slope * (point.X - node.X));
}
