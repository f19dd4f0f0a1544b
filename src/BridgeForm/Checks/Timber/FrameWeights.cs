using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>Weights that one interior frame carries, newtons.</summary>
/// <param name="Deck">Boards or treads and stringers of one bay, and the packer.</param>
/// <param name="Guard">Rails, cap and post of one side.</param>
/// <param name="Brace">One brace.</param>
/// <param name="Base">Base and hardware.</param>
internal sealed record FrameWeights(double Deck, double Guard, double Brace, double Base)
{
    /// <summary>All of it.</summary>
    public double Total => Deck + (2 * (Guard + Brace)) + Base;

    /// <summary>
    /// Of frame 1 with the whole of the longest bay; of the shortest for the light side.
    /// </summary>
    /// <param name="layout">Where everything lies.</param>
    /// <param name="density">Density of a stock, kg/m³.</param>
    /// <param name="bay">The bay whose parts hang on the frame, half from either side.</param>
    public static FrameWeights Of(BridgeLayout layout, Func<StockParameters, double> density, int bay)
    {
        var members = Members.Frame(layout, 1).Members.AddRange(Members.Bay(layout, bay).Members);
        var asked = layout.Parameters.Frames.Holes;
        double Weight(WeightShare share) => members
            .Where(m => RoleTable.Of(m.Role).Share == share)
            .Sum(m => MemberVolume.Of(m.Shape, MemberVolume.IsDrilled(asked, m.Role)) * density(layout.Parameters.StockNamed(m.Stock))) * BridgeMasses.Gravity;
        return new FrameWeights(
            Weight(WeightShare.Deck),
            Weight(WeightShare.Guard) / 2,
            Weight(WeightShare.Brace) / 2,
            Weight(WeightShare.Base) + (layout.Parameters.Frames.HardwareMass * BridgeMasses.Gravity));
    }
}
