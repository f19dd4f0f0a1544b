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

    // Masses of the parts alike that are summed just now: one list for all, since a bridge is weighed often.
    private readonly List<double> _alike = [];

    /// <summary>Frame <paramref name="index"/> (0 … bays) as it is built on the ground, with its hardware; and what is fixed on it in its place.</summary>
    public (double Built, double Added) Frame(int index)
    {
        var parts = Members.InFrame(layout, index, Sides.Left);
        return (Sum(parts, isBuilt: true, _frames.HardwareMass), Sum(parts, isBuilt: false, 0));
    }

    /// <summary>Deck, rails and caps of bay <paramref name="index"/> (1 … bays).</summary>
    public double Bay(int index) => Sum(Members.InBay(layout, index, Sides.Left), isBuilt: null, 0);

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
        MemberVolume.Of(member.Shape, MemberVolume.IsDrilled(_frames.Holes, member.Role)) * _densities[member.Stock];
}
