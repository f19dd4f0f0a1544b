using System.Collections.Immutable;
using BridgeForm.Frames;

namespace BridgeForm.Loads;

/// <summary>Masses at in-service moisture, kilograms.</summary>
/// <param name="Frames">Base, posts, braces and hardware of each frame.</param>
/// <param name="Packers">Packer of each frame.</param>
/// <param name="Bays">Deck, rails and caps of each bay; the first is bay 1.</param>
public sealed record BridgeMasses(
    ImmutableArray<double> Frames, ImmutableArray<double> Packers, ImmutableArray<double> Bays)
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    public const double Gravity = Quantities.Units.StandardGravity;

    /// <summary>Weighs every member of a layout.</summary>
    public static BridgeMasses Of(BridgeLayout layout, CancellationToken token = default)
    {
        var weights = new MemberWeights(layout);
        var frames = ImmutableArray.CreateBuilder<double>(layout.Bays + 1);
        var packers = ImmutableArray.CreateBuilder<double>(layout.Bays + 1);
        var bays = ImmutableArray.CreateBuilder<double>(layout.Bays);
        for (var i = 0; i <= layout.Bays; i++)
        {
            token.ThrowIfCancellationRequested();
            var (built, added) = weights.Frame(i);
            frames.Add(built);
            packers.Add(added);
        }

        for (var i = 1; i <= layout.Bays; i++)
        {
            token.ThrowIfCancellationRequested();
            bays.Add(weights.Bay(i));
        }

        return new BridgeMasses(frames.MoveToImmutable(), packers.MoveToImmutable(), bays.MoveToImmutable());
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
