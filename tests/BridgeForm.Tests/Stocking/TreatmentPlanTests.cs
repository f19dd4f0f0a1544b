using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Solids;
using BridgeForm.Stocking;

namespace BridgeForm.Tests.Stocking;

public class TreatmentPlanTests
{
    private static readonly Lazy<BridgeModel> s_garden = new(() => Bridges.Build(Bridges.Garden));

    // Worked by hand: 100 cuts of 2x8 ends are 100 x 1.5 in x 7.25 in = 7.55 ft²; two coats at 100 ft²/gal take 0.151 gal.
    [Fact]
    public void Hundred_ends_of_2x8_take_fifteen_hundredths_of_a_gallon()
    {
        const double squareFoot = 0.3048 * 0.3048, gallon = 0.003785411784;
        var plan = new TreatmentPlan(
            2, 100 * squareFoot / gallon, false, [new TreatedPiece("D1", 100, "treated", 1.5 * 7.25 * 0.0254 * 0.0254)], []);
        Assert.Equal(7.55, plan.Area / squareFoot, 0.005);
        Assert.Equal(0.151, plan.Volume / gallon, 0.0005);
    }

    [Fact]
    public void Area_is_that_of_the_cut_faces_of_treated_pieces()
    {
        var model = s_garden.Value;
        var plan = TreatmentPlan.Plan(model.Pieces, model.Parameters);
        var area = model.Pieces
            .Where(p => model.Parameters.StockNamed(p.Stock).Treated)
            .Sum(
                p => p.Occurrences.Length * p.Solid.Faces.Select((f, i) => (f, i)).Where(x => x.f.Origin != FaceOrigin.Stock).Sum(
                    x => FaceArea(p.Solid, x.f)));
        Assert.Equal(area, plan.Area, area * 1e-9);
        Assert.DoesNotContain(plan.Pieces, p => p.Stock is "cedar");
        Assert.Equal(new UntreatedStock("cedar", true), Assert.Single(plan.LeftOut));
    }

    [Fact]
    public void Coats_and_coverage_come_from_the_project_file()
    {
        var model = s_garden.Value;
        var given = model.Parameters with { Treatment = new TreatmentParameters(3, 5000) };
        var plan = TreatmentPlan.Plan(model.Pieces, given);
        Assert.Equal(plan.Area * 3 / 5000, plan.Volume, 1e-12);
        Assert.False(plan.IsDefault);
        Assert.True(TreatmentPlan.Plan(model.Pieces, model.Parameters).IsDefault);
    }

    /// <summary>Area of a face with holes by Green's theorem in the plane of the face.</summary>
    private static double FaceArea(Solid solid, Face face)
    {
        var sum = Vector3d.Zero;
        foreach (var loop in face.Loops)
        {
            for (var i = 0; i < loop.Length; i++)
            {
                sum += solid.Vertices[loop[i]].Cross(solid.Vertices[loop[(i + 1) % loop.Length]]);
            }
        }

        return sum.Length / 2;
    }
}
