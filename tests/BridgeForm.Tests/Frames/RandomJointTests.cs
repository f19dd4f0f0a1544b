using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project.Files;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Frames;

/// <summary>
/// Joints by chance on braced frames by chance. Those that the file may have: bolts lie in the wood of both members, plates keep off
/// one another, each body is closed, the check compares two finite numbers. BRIDGEFORM_RANDOM_JOINTS says how many are tried.
/// </summary>
public sealed class RandomJointTests
{
    private const int Few = 300;

    [Fact]
    public void What_the_file_may_have_can_be_made()
    {
        var random = new Random(15);
        var tried = int.TryParse(
            Environment.GetEnvironmentVariable("BRIDGEFORM_RANDOM_JOINTS"), CultureInfo.InvariantCulture, out var many) ? many : Few;
        var good = 0;
        for (var i = 0; i < tried; i++)
        {
            var text = Text(random);
            var reading = ProjectReader.Read(Ground.Under(text), "random.yaml", Bridges.Catalogue);
            if (reading.Parameters is not { } parameters)
            {
                Assert.All(reading.Lines, l => Assert.EndsWith("]", l, StringComparison.Ordinal));
                continue;
            }

            good++;
            var layout = Bridges.Layout(parameters);
            foreach (var member in Members.Frame(layout, 1).Members)
            {
                foreach (var hole in member.Shape.Holes.Where(h => h.Depth is null))
                {
                    var (entry, bottom) = member.Shape.HoleAxis(hole);
                    var inside = hole.Diameter / 2;
                    Assert.All(
                        (Plane[])[member.Shape.Near, member.Shape.Far],
                        end => Assert.True(Math.Max(end.SignedDistance(entry), end.SignedDistance(bottom)) < -inside, text));
                }
            }

            var steel = JointSteel.Lay(parameters, [layout.Poses[1]]);
            Assert.All(steel.SelectMany(s => s.Bodies), b => Assert.True(b.ToSolid().OrNull is { Volume: > 0 }, text));
            Assert.True(PieceSet.TryOf(parameters, Members.Lay(layout), out var pieces, out var failure), failure);

            // Joints ask for nothing of ropes and contacts.
            var context = new CheckContext(
                parameters, layout, null!, pieces, null!, BridgeMasses.Weigh(layout), new RopeWork(), WindWork.None);
            foreach (var check in GuardJoints.Check(context))
            {
                Assert.True(check.Status == CheckStatus.Engineer || (check.Capacity > 0 && check.Demand > 0 && check.Ratio > 0), text);
            }
        }

        Assert.InRange(good, tried / 20, tried);
    }

    private static string Text(Random random)
    {
        string In(double low, double high) => FormattableString.Invariant($"{low + (random.NextDouble() * (high - low)):0.###} in");
        string Lean(double low, double high) => FormattableString.Invariant($"{low + (random.NextDouble() * (high - low)):0.#} deg");
        var width = (string[])["4x4", "4x6"];
        var joints = new List<string>();
        foreach (var joint in (string[])["post-foot", "brace-foot", "brace-head"])
        {
            if (random.Next(3) > 0)
            {
                var lines = random.Next(1, 3);
                var bolt = lines > 1 ? (random.Next(2) == 0 ? "1/4 in" : "5/16 in") : random.Next(4) == 0 ? "1/2 in" : "3/8 in";
                joints.Add($"  {joint}: {{ bolt: {bolt}, lines: {lines}, count: {random.Next(2, 4)}, spacing: {In(1.9, 3.5)}, "
                    + $"carrier: {{ bolt: {(random.Next(2) == 0 ? "5/16 in" : "3/8 in")}, count: {random.Next(2, 4)}, "
                    + $"spacing: {In(1.9, 3)}, depth: {(joint is "brace-head" ? In(1.5, 2) : In(1.5, 4.5))}, shift: "
                    + $"{(joint is "brace-head" ? In(-5, 1) : In(-1, 1))} }} }}");
            }
        }

        return $$"""
            name: Random joints (invented)
            site: { span: 12 ft }
            ropes: { spacing: {{In(42, 60)}} }
            frames:
              spacing: 4 ft
              stance: {{(random.Next(2) == 0 ? "square" : "plumb")}}
              base: { section: {{(random.Next(2) == 0 ? "4x6" : "4x8")}}, length: 80 in }
              post: { section: 4x4, length: 40 in, lean: {{Lean(0, 10)}}, foot: 18-1/2 in }
              brace: { section: {{width[random.Next(2)]}}, lean: {{Lean(12, 24)}}, foot: {{In(30, 36)}} }
            {{(joints.Count == 0 ? "" : "joints:\n" + string.Join("\n", joints))}}
            """;
    }
}
