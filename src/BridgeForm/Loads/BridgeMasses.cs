using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Loads;

/// <summary>Masses at in-service moisture, kilograms.</summary>
/// <param name="Frames">Base, posts, braces and hardware of each frame.</param>
/// <param name="Packers">Packer of each frame.</param>
/// <param name="Bays">Deck, rails, caps and netting of each bay; the first is bay 1.</param>
public sealed record BridgeMasses(
    ImmutableArray<double> Frames, ImmutableArray<double> Packers, ImmutableArray<double> Bays)
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    public const double Gravity = Quantities.Units.StandardGravity;

    /// <summary>Weighs every member of a layout.</summary>
    public static BridgeMasses Weigh(BridgeLayout layout, CancellationToken token = default) => Weigh(layout, Sampling.All, token);

    /// <summary>Weighs members of a layout, those of some frames and bays for those next to them.</summary>
    internal static BridgeMasses Weigh(BridgeLayout layout, Sampling sampling, CancellationToken token)
    {
        var weights = new MemberWeights(layout, sampling);
        var frames = Each(0, layout.Bays, sampling, weights.Frame, token);
        return new BridgeMasses(
            [.. frames.Select(f => f.Built)], [.. frames.Select(f => f.Added)], [.. Each(1, layout.Bays, sampling, weights.Bay, token)]);
    }

    private static T[] Each<T>(int first, int last, Sampling sampling, Func<int, T> weigh, CancellationToken token)
    {
        var each = new T[last - first + 1];
        var (weighed, done) = (first - 1, default(T)!);
        for (var i = first; i <= last; i++)
        {
            if (sampling.For(i, first, last) is var one && one != weighed)
            {
                token.ThrowIfCancellationRequested();
                (weighed, done) = (one, weigh(one));
            }

            each[i - first] = done;
        }

        return each;
    }

    /// <summary>
    /// Load at each node on one rope, newtons: half the frame's weight and half of what hangs in its two bays; 0 at the
    /// supports, whose frames stand on the landings.
    /// </summary>
    public ImmutableArray<double> NodeLoads() => PerRope(i =>
        Frames[i] + Packers[i] + ((Bays[i - 1] + Bays[i]) / 2));

    /// <summary>As <see cref="NodeLoads"/>, with frames hung but neither deck nor guard.</summary>
    public ImmutableArray<double> FrameStageLoads() => PerRope(i => Frames[i]);

    private ImmutableArray<double> PerRope(Func<int, double> mass)
    {
        var loads = new double[Frames.Length];
        for (var i = 1; i < loads.Length - 1; i++)
        {
            loads[i] = mass(i) * Gravity / 2;
        }

        return [.. loads];
    }
}

/// <summary>
/// Masses of a layout's members, kilograms. Every shape of a rope is found by weighing the whole bridge several times, so
/// what is alike on both sides is cut once: a part on the right is the mirror image of that on the left.
/// </summary>
internal sealed class MemberWeights(BridgeLayout layout, Sampling sampling)
{
    private readonly FrameParameters _frames = layout.Parameters.Frames;
    private readonly Dictionary<string, double> _densities =
        layout.Parameters.Stock.ToDictionary(s => s.Name, s => s.Density.InService, StringComparer.Ordinal);

    // Masses of the parts alike that are summed just now: one list for all, since a bridge is weighed often.
    private readonly List<double> _alike = [];

    /// <summary>
    /// Frame <paramref name="index"/> (0 … bays) as it is built on the ground, with its hardware; and what is fixed on it in
    /// its place.
    /// </summary>
    public (double Built, double Added) Frame(int index)
    {
        var parts = Members.InFrame(layout, index, Sides.Left).FindAll(p => !RoleTable.Of(p.Role).StandsOnLanding);
        return (Sum(parts, isBuilt: true, _frames.HardwareMass), Sum(parts, isBuilt: false, 0));
    }

    /// <summary>Deck, rails and caps of bay <paramref name="index"/> (1 … bays).</summary>
    public double Bay(int index) => Sum(Members.InBay(layout, index, Sides.Left), isBuilt: null, GuardNet.Mass(layout, index));

    /// <summary>Parts role by role, the right-hand ones after the left-hand ones.</summary>
    private double Sum(List<Member> parts, bool? isBuilt, double sum)
    {
        for (var i = 0; i < parts.Count;)
        {
            var (role, side) = (parts[i].Role, parts[i].Side);
            var counts = isBuilt is not { } built || built == RoleTable.Of(role).AddedIn.Contains(AssemblyWork.BuildFrame);
            _alike.Clear();
            for (; i < parts.Count && parts[i].Role == role && parts[i].Side == side; i++)
            {
                _alike.Add(counts ? Mass(parts[i]) : 0);
            }

            for (var twin = side == Side.None ? 1 : 0; counts && twin < 2; twin++)
            {
                foreach (var mass in _alike)
                {
                    sum += mass;
                }
            }
        }

        return sum;
    }

    private double Mass(Member member) =>
        MemberVolume.Measure(member.Shape, !sampling.IsRough && MemberVolume.IsDrilled(_frames.Holes, member.Role))
            * _densities[member.Stock];
}
