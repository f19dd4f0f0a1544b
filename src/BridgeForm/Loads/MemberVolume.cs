using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Loads;

/// <summary>Volume of a member, for every weight alike.</summary>
internal static class MemberVolume
{
    /// <summary>
    /// In m³: in closed form, or of the solid where only the solid knows it (tapers, and the user's own holes where they meet
    /// channels, ends or each other: then of the length alone on which they meet). Cuts that leave no solid are weighed as if
    /// their tapers and meetings were not there: a weight on the way to the shape of the rope, after which
    /// the layout's fit tells the fault. A part turned over weighs nothing.
    /// </summary>
    /// <param name="shape">Stick and cuts.</param>
    /// <param name="drilled">The user asks for holes of his own in members of this kind.</param>
    public static double Measure(CutStock shape, bool drilled)
    {
        if ((shape.Rips.IsEmpty || shape.IsRound) && !(drilled && !LooseHoles.Any(shape)))
        {
            return Math.Max(0, CutStockVolume.Prism(shape));
        }

        return MeetingCuts.Volume(shape) ?? StockSolid.Build(shape).OrNull?.Volume ?? Math.Max(0, CutStockVolume.Prism(shape));
    }

    /// <summary>Whether the user asks for holes in members of a kind: the solid of each costs a hundred closed forms.</summary>
    public static bool IsDrilled(ImmutableArray<HoleParameters> asked, Role role)
    {
        // For every member of every round of the form finding: a closure each would be a quarter of what that allocates.
        foreach (var hole in asked)
        {
            if (hole.Part == role)
            {
                return true;
            }
        }

        return false;
    }
}
