using System.Globalization;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>Volumes against manifold-3d 3.5.4, an outside library for mesh booleans (tests/referees/manifold.mjs).</summary>
[Trait("Category", "Referee")]
public class ManifoldRefereeTest
{
    private const int Members = 500;
    private const int FirstSeed = 1_000_000; // apart from the members of the closedness test
    private const double RelativeDifference = 1e-6;

    [Fact]
    public void Five_hundred_random_members_have_the_volume_that_manifold_3d_finds()
    {
        var ours = new List<(int Seed, double Volume)>();
        var bodies = new List<CutBody>();
        for (var seed = FirstSeed; ours.Count < Members; seed++)
        {
            var member = RandomMember.Make(seed, withinRoundOff: false);
            var body = CutBody.Of(member.Stock, member.Steps);
            var result = body.Steps.Aggregate((SolidResult)Solid.Box(body.Min, body.Max), (left, step) => left.Then(step.Apply));
            if (result.OrNull is not { } solid)
            {
                continue;
            }

            ours.Add((seed, solid.Volume));
            bodies.Add(body);
        }

        var theirs = Manifold.Ask(bodies);
        Assert.Equal(Members, theirs.Count);
        var faults = ours.Zip(theirs, (mine, other) => (mine, other))
            .Where(pair => !string.Equals(pair.other.Status, "NoError", StringComparison.Ordinal) || pair.other.Open != 0
                || !(Math.Abs(pair.mine.Volume - pair.other.Volume) <= RelativeDifference * pair.mine.Volume))
            .Select(pair => string.Create(
                CultureInfo.InvariantCulture,
                $"seed {pair.mine.Seed}: {pair.mine.Volume:g12} m3, manifold-3d {pair.other.Volume:g12} m3 {pair.other.Status}, open "
                    + $"{pair.other.Open}"))
            .ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} members differ:\n" + string.Join('\n', faults.Take(40)));
    }
}
