using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;

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
    public static BridgeMasses Of(BridgeLayout layout)
    {
        var densities = layout.Parameters.Stock.ToDictionary(
            s => s.Name, s => s.Density.InService, StringComparer.Ordinal);
        var frames = ImmutableArray.CreateBuilder<double>(layout.Bays + 1);
        var packers = ImmutableArray.CreateBuilder<double>(layout.Bays + 1);
        var bays = ImmutableArray.CreateBuilder<double>(layout.Bays);
        var asked = layout.Parameters.Frames.Holes;
        for (var i = 0; i <= layout.Bays; i++)
        {
            double frame = layout.Parameters.Frames.HardwareMass, packer = 0;
            foreach (var member in Members.Frame(layout, i).Members)
            {
                var mass = MemberVolume.Of(member.Shape, MemberVolume.IsDrilled(asked, member.Role)) * densities[member.Stock];
                (frame, packer) = member.Role == Role.Packer ? (frame, packer + mass) : (frame + mass, packer);
            }

            frames.Add(frame);
            packers.Add(packer);
        }

        for (var i = 1; i <= layout.Bays; i++)
        {
            var bay = 0.0;
            foreach (var member in Members.Bay(layout, i).Members)
            {
                bay += MemberVolume.Of(member.Shape, drilled: false) * densities[member.Stock];
            }

            bays.Add(bay);
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
