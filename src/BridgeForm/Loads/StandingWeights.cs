using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Loads;

/// <summary>
/// How high the empty bridge stands on its ropes, brought to its nodes: each frame to its own, half of each bay to both of its
/// own; 0 at the supports, whose frames stand on the landings. Heights are straight over the ropes' axes. The ropes' own weight
/// lies at height 0 and is not in it.
/// </summary>
public sealed record StandingWeights
{
    /// <summary>How high people's weight lies over the deck, metres: common practice, no source.</summary>
    public const double PeopleOverDeck = 1.0;

    /// <summary>Weight × height of everything, in service, N·m.</summary>
    public required ImmutableArray<double> Moments { get; init; }

    /// <summary>Of base, posts, braces and hardware alone, as a frame is hung before there is a deck, N·m.</summary>
    public required ImmutableArray<double> FrameMoments { get; init; }

    /// <summary>Of rails, caps and what goes with them alone, which come last, N·m.</summary>
    public required ImmutableArray<double> GuardMoments { get; init; }

    /// <summary>Weight of everything at the low end of its wood's density, newtons.</summary>
    public required ImmutableArray<double> Light { get; init; }

    /// <summary>Weight × height of that, N·m.</summary>
    public required ImmutableArray<double> LightMoments { get; init; }

    /// <summary>Weight of everything at the high end of its wood's density, newtons.</summary>
    public required ImmutableArray<double> Heavy { get; init; }

    /// <summary>Weight × height of that, N·m.</summary>
    public required ImmutableArray<double> HeavyMoments { get; init; }

    /// <summary>Mass × (height² + distance from the middle²) of everything, in service, kg·m².</summary>
    public required ImmutableArray<double> Seconds { get; init; }

    /// <summary>Deck's surface over the ropes' axes, metres; 0 at the supports.</summary>
    public required ImmutableArray<double> DeckHeights { get; init; }

    /// <summary>What a wind across the bridge blows against, and the weights that hold it then.</summary>
    internal SideSurfaces Surfaces { get; init; } = SideSurfaces.None;

    /// <summary>Weighs every member of a layout where it stands.</summary>
    /// <remarks>
    /// A part lies where the middle of its stick's axis does: bevels, channels and tapers move its centre by millimetres.
    /// </remarks>
    public static StandingWeights Weigh(BridgeLayout layout, CancellationToken token = default) => Weigh(layout, Sampling.All, token);

    /// <summary>The same from some frames and bays for those next to them.</summary>
    internal static StandingWeights Weigh(BridgeLayout layout, Sampling sampling, CancellationToken token)
    {
        var sums = new Sums[layout.Bays + 1];
        var frames = new Sums[layout.Bays + 1];
        var guards = new double[layout.Bays + 1];
        var decks = new double[layout.Bays + 1];
        var pile = new Pile(layout, sampling);
        var sides = new SideSilhouette(layout);
        var (weighed, hung, stood, guarded) = (-1, default(Sums), default(Sums), 0.0);
        for (var i = 0; i <= layout.Bays; i++)
        {
            var (node, slope) = (layout.Poses[i].Node, Elementary.Tan(layout.Poses[i].Slope));
            decks[i] = Pile.Over(node, slope, layout.Deck.Points[i]) + layout.Parameters.Deck.Thickness;
            if (sampling.For(i, 0, layout.Bays) is var one && one != weighed)
            {
                token.ThrowIfCancellationRequested();
                (weighed, stood) = (one, pile.Frame(layout, sides, one, out hung, out guarded));
            }

            (sums[i], frames[i], guards[i]) = (stood, hung, guarded);
        }

        var (at, half) = (0, default(Sums));
        for (var bay = 1; bay <= layout.Bays; bay++)
        {
            if (sampling.For(bay, 1, layout.Bays) is var one && one != at)
            {
                token.ThrowIfCancellationRequested();
                (at, half) = (one, pile.Bay(layout, sides, one, out guarded).Half);
            }

            (sums[bay - 1], sums[bay]) = (sums[bay - 1] + half, sums[bay] + half);
            (guards[bay - 1], guards[bay]) = (guards[bay - 1] + (guarded / 2), guards[bay] + (guarded / 2));
        }

        ImmutableArray<EndSurface> ends =
            [sides.End(0, sums[0].Surface, sums[0].Light), sides.End(layout.Bays, sums[^1].Surface, sums[^1].Light)];
        (sums[0], sums[^1], frames[0], frames[^1], decks[0], decks[^1]) = (default, default, default, default, 0, 0);
        (guards[0], guards[^1]) = (0, 0);
        return new StandingWeights
        {
            Moments = [.. sums.Select(s => s.Moment)],
            FrameMoments = [.. frames.Select(s => s.Moment)],
            GuardMoments = ImmutableArray.Create(guards),
            Surfaces = new SideSurfaces(
                [.. sums.Select(s => s.Surface)], [.. frames.Select(s => s.Surface)],
                [.. frames.Select(s => s.Light)], [.. frames.Select(s => s.LightMoment)], ends),
            Light = [.. sums.Select(s => s.Light)],
            LightMoments = [.. sums.Select(s => s.LightMoment)],
            Heavy = [.. sums.Select(s => s.Heavy)],
            HeavyMoments = [.. sums.Select(s => s.HeavyMoment)],
            Seconds = [.. sums.Select(s => s.Second)],
            DeckHeights = ImmutableArray.Create(decks),
        };
    }

    private readonly record struct Sums(
        double Moment, double Light, double LightMoment, double Heavy, double HeavyMoment, double Second, SideSurface Surface)
    {
        public Sums(SideSurface surface)
            : this(0, 0, 0, 0, 0, 0, surface)
        {
        }

        public Sums Half => new(Moment / 2, Light / 2, LightMoment / 2, Heavy / 2, HeavyMoment / 2, Second / 2, 0.5 * Surface);

        public static Sums operator +(Sums a, Sums b) => new(
            a.Moment + b.Moment, a.Light + b.Light, a.LightMoment + b.LightMoment, a.Heavy + b.Heavy, a.HeavyMoment + b.HeavyMoment,
            a.Second + b.Second, a.Surface + b.Surface);
    }

    /// <summary>Weighs parts; what stands on both sides is given on the left alone.</summary>
    private sealed class Pile(BridgeLayout layout, Sampling sampling)
    {
        private readonly FrameParameters _frames = layout.Parameters.Frames;
        private readonly Dictionary<string, (double InService, double Low, double High)> _densities = layout.Parameters.Stock
            .ToDictionary(s => s.Name, s => (s.Density.InService, s.Density.Low, s.Density.High), StringComparer.Ordinal);

        /// <summary>Hardware lies on the base's top.</summary>
        private Sums Hardware(double top)
        {
            var weight = _frames.HardwareMass * BridgeMasses.Gravity;
            return new Sums(weight * top, weight, weight * top, weight, weight * top, _frames.HardwareMass * top * top, default);
        }

        /// <summary>A frame with all that is fixed on it, and as it is hung before there is a deck.</summary>
        public Sums Frame(BridgeLayout layout, SideSilhouette sides, int frame, out Sums hung, out double guard)
        {
            var (node, slope) = (layout.Poses[frame].Node, Elementary.Tan(layout.Poses[frame].Slope));
            var hardware = Hardware(layout.Levels[frame].Top);
            var sum = hardware + Weigh(Members.InFrame(layout, frame, Sides.Left), node, slope, out hung, out guard);
            hung += hardware + new Sums(sides.Posts(frame));
            return sum + new Sums(sides.Posts(frame) - sides.PostsHidden(frame));
        }

        /// <summary>Deck, rails and caps of a bay.</summary>
        public Sums Bay(BridgeLayout layout, SideSilhouette sides, int bay, out double guard)
        {
            var chord = layout.Poses[bay].Node - layout.Poses[bay - 1].Node;
            var slope = chord.Y / chord.X;
            return Weigh(Members.InBay(layout, bay, Sides.Left), layout.Poses[bay].Node, slope, out _, out guard)
                + new Sums(sides.DeckEdge(bay, slope)) + Net(layout, bay, slope, ref guard);
        }

        // Both sides' netting, at the middle of its corners.
        private static Sums Net(BridgeLayout layout, int bay, double slope, ref double guard)
        {
            if (layout.Parameters.Guard.Net is not { } net)
            {
                return default;
            }

            var panel = NetPanel.Lay(layout, bay, Side.Left);
            var (height, mass) = (Over(layout.Poses[bay].Node, slope, panel.Middle), GuardNet.Mass(layout, bay));
            var (weight, seen) = (mass * BridgeMasses.Gravity, 2 * net.Solidity * panel.FromSide);
            guard += weight * height;
            return new Sums(
                weight * height, weight, weight * height, weight, weight * height,
                mass * ((height * height) + (panel.Middle.Z * panel.Middle.Z)), new SideSurface(seen, seen * height));
        }

        private Sums Weigh(List<Member> parts, Vector3d node, double slope, out Sums builtOnGround, out double guard)
        {
            var sum = default(Sums);
            (builtOnGround, guard) = (default, 0);
            foreach (var part in parts.Where(p => !RoleTable.Of(p.Role).StandsOnLanding))
            {
                var own = Weigh(part, node, slope);
                sum += own;
                var added = RoleTable.Of(part.Role).AddedIn;
                if (added.Contains(AssemblyWork.BuildFrame))
                {
                    builtOnGround += own;
                }

                if (added.Contains(AssemblyWork.FixRails) || added.Contains(AssemblyWork.FixCaps))
                {
                    guard += own.Moment;
                }
            }

            return sum;
        }

        /// <summary>How far a point lies straight above a line through a node of the ropes, metres.</summary>
        public static double Over(Vector3d node, double slope, Vector3d point) =>
            point.Y - node.Y - (slope * (point.X - node.X));

        private Sums Weigh(Member part, Vector3d node, double slope)
        {
            var (near, far) = part.Shape.LengthRange();
            var middle = part.Placement.ToWorld(new Vector3d((near + far) / 2, 0, 0));
            var (height, along) = (Over(node, slope, middle), part.Placement.X);
            var volume = MemberVolume.Measure(
                part.Shape, !sampling.IsRough && MemberVolume.IsDrilled(_frames.Holes, part.Role)) * (part.Side == Side.None ? 1 : 2);
            var (inService, low, high) = _densities[part.Stock];
            var (weight, light) = (volume * inService * BridgeMasses.Gravity, volume * low * BridgeMasses.Gravity);
            var heavy = volume * high * BridgeMasses.Gravity;
            var across = ((along.Y * along.Y) + (along.Z * along.Z)) * (far - near) * (far - near) / 12;
            var second = volume * inService * ((height * height) + (middle.Z * middle.Z) + across);
            return new Sums(
                weight * height, light, light * height, heavy, heavy * height, second, SideSilhouette.Of(part, _frames, height));
        }
    }
}
