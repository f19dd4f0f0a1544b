using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Loads;

/// <summary>
/// Masses of a layout's members, kilograms. Every shape of a rope is found by weighing the whole bridge several times, so
/// what is alike on both sides is cut once: a part on the right is the mirror image of that on the left.
/// </summary>
internal sealed class MemberWeights(BridgeLayout layout)
{
    private readonly FrameParameters _frames = layout.Parameters.Frames;
    private readonly Dictionary<string, double> _densities =
        layout.Parameters.Stock.ToDictionary(s => s.Name, s => s.Density.InService, StringComparer.Ordinal);

    /// <summary>Base, posts, braces and hardware of frame <paramref name="index"/> (0 … bays).</summary>
    public double Frame(int index)
    {
        var post = Mass(Uprights.Post(layout, index, Side.Left));
        var brace = Mass(Uprights.Brace(layout, index, Side.Left));
        return _frames.HardwareMass + Mass(BaseMember.Of(layout, index)) + post + post + brace + brace;
    }

    /// <summary>The packer of frame <paramref name="index"/>; 0 where there is none.</summary>
    public double Packer(int index) => Packers.Of(layout, index) is { } packer ? Mass(packer) : 0;

    /// <summary>Deck, rails and caps of bay <paramref name="index"/> (1 … bays).</summary>
    public double Bay(int index)
    {
        var sum = 0.0;
        foreach (var part in Members.Deck(layout, index))
        {
            sum += Mass(part);
        }

        double[] rails = [.. GuardRails.Of(layout, index, Side.Left).Select(Mass)];
        foreach (var rail in (ReadOnlySpan<double>)[.. rails, .. rails])
        {
            sum += rail;
        }

        var cap = Mass(GuardCaps.Of(layout, index, Side.Left));
        return sum + cap + cap;
    }

    private double Mass(Member member) =>
        MemberVolume.Of(member.Shape, MemberVolume.IsDrilled(_frames.Holes, member.Role)) * _densities[member.Stock];
}
