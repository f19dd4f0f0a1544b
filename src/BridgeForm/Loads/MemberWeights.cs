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

    /// <summary>Frame <paramref name="index"/> (0 … bays) as it is built on the ground, with its hardware; and what is fixed on it in its place.</summary>
    public (double Built, double Added) Frame(int index)
    {
        var parts = Members.InFrame(layout, index, Sides.Left).ToLookup(m => RoleTable.Of(m.Role).AddedIn.Contains(AssemblyWork.BuildFrame));
        return (Sum(parts[true], _frames.HardwareMass), Sum(parts[false], 0));
    }

    /// <summary>Deck, rails and caps of bay <paramref name="index"/> (1 … bays).</summary>
    public double Bay(int index) => Sum(Members.InBay(layout, index, Sides.Left), 0);

    /// <summary>Parts role by role, the right-hand ones after the left-hand ones.</summary>
    private double Sum(IEnumerable<Member> parts, double sum)
    {
        foreach (var alike in parts.GroupBy(m => (m.Role, m.Side)))
        {
            double[] masses = [.. alike.Select(Mass)];
            foreach (var mass in alike.Key.Side == Side.None ? masses : [.. masses, .. masses])
            {
                sum += mass;
            }
        }

        return sum;
    }

    private double Mass(Member member) =>
        MemberVolume.Of(member.Shape, MemberVolume.IsDrilled(_frames.Holes, member.Role)) * _densities[member.Stock];
}
