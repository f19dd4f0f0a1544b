using BridgeForm.Output.ScaleModel;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Output.ScaleModel;

/// <summary>Nothing is printed thinner than <c>shop.print.thinnest</c>.</summary>
public sealed class PrintedThicknessTests
{
    public static TheoryData<string, double> Cases
    {
        get
        {
            var cases = new TheoryData<string, double>();
            foreach (var (name, _) in PrintCases.Samples)
            {
                cases.Add(name, 0.0012);
                cases.Add(name, 0.0019);
            }

            return cases;
        }
    }

    /// <summary>
    /// The thickness of a body is the least distance of two parallel planes that hold it between them; of convex bodies one of them is the
    /// plane of a face.
    /// </summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_body_is_as_thick_as_asked_for(string name, double thinnest)
    {
        var plan = PrintPlan.Of(PrintCases.Samples.Single(s => s.Name == name).Model.At(1 / 20.0, thinnest));
        Assert.All(plan.Placed.SelectMany(p => p.Item.Bodies), b => Assert.True(
            Thickness(b) * plan.Rules.Scale >= thinnest - 1e-9, $"{b.Name}: {1000 * Thickness(b) * plan.Rules.Scale:0.###} mm"));
    }

    /// <summary>
    /// Boards of 1-1/2 in are 1.905 mm: half of that is 0.95 mm, so that what joins them is 1.2 mm, and grooves are 0.705 mm deep. Where
    /// they are printed 2.5 mm thick, because nothing may be thinner, no groove is left, and it is told.
    /// </summary>
    [Fact]
    public void What_joins_the_boards_is_no_thinner_and_closed_gaps_are_told()
    {
        var model = PrintCases.Samples.First().Model;
        var plan = PrintPlan.Of(model.At(1 / 20.0));
        var plates = plan.Placed.SelectMany(p => p.Item.Bodies).Where(b => b.Name is "plate that joins the boards").ToList();
        Assert.NotEmpty(plates);
        Assert.All(plates, b => Assert.Equal(1.2, 1000 * Thickness(b) * plan.Rules.Scale, 1e-6));
        Assert.DoesNotContain(plan.Told, t => t.StartsWith("Gaps", StringComparison.Ordinal));
        var thick = PrintPlan.Of(model.At(1 / 20.0, thinnest: 0.0025));
        Assert.Contains(
            "Gaps between deck boards are not printed: boards are 2.50 mm thick, and what joins them may not be thinner", thick.Told);
        Assert.All(
            thick.Placed.SelectMany(p => p.Item.Bodies).Where(b => b.Name is DeckItems.Closed),
            b => Assert.Equal(2.5, 1000 * Thickness(b) * thick.Rules.Scale, 1e-6));
    }

    private static double Thickness(PrintBody body) => body.Corners.Chunk(3)
        .Select(t => (body.Points[t[1]] - body.Points[t[0]]).Cross(body.Points[t[2]] - body.Points[t[0]]))
        .Where(n => n.Length > 1e-12).Select(n => Between(body, n.Normalized())).Min();

    private static double Between(PrintBody body, Vector3d normal)
    {
        var reach = body.Points.Select(p => p.Dot(normal)).ToList();
        return reach.Max() - reach.Min();
    }
}
