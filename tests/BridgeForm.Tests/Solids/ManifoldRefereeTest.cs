using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>Volumes against manifold-3d 3.5.4, an outside library for mesh booleans (tests/referees/manifold.mjs).</summary>
[Trait("Category", "Referee")]
public class ManifoldRefereeTest
{
    private const int Members = 500;
    private const int FirstSeed = 1_000_000; // apart from the members of the closedness test
    private const double RelativeDifference = 1e-6;

    private const string HowToInstall =
        "This test needs Node 20 or later and the packages in tests/referees: run `npm ci --prefix tests/referees` from the checkout's root.";

    [Fact]
    public void Five_hundred_random_members_have_the_volume_that_manifold_3d_finds()
    {
        var ours = new List<(int Seed, double Volume)>();
        var lines = new StringBuilder();
        for (var seed = FirstSeed; ours.Count < Members; seed++)
        {
            var steps = AsPlanesAndCutters(RandomMember.Make(seed, withinRoundOff: false), out var min, out var max);
            var result = steps.Aggregate((SolidResult)Solid.Box(min, max), (body, step) => body.Then(step.Apply));
            if (result.OrNull is not { } solid) continue;
            ours.Add((seed, solid.Volume));
            lines.AppendLine(ToJson(min, max, steps));
        }

        var theirs = Ask(lines.ToString());
        Assert.Equal(Members, theirs.Count);
        var faults = ours.Zip(theirs, (mine, other) => (mine, other))
            .Where(pair => !string.Equals(pair.other.Status, "NoError", StringComparison.Ordinal) || pair.other.Open != 0
                || !(Math.Abs(pair.mine.Volume - pair.other.Volume) <= RelativeDifference * pair.mine.Volume))
            .Select(pair => string.Create(
                CultureInfo.InvariantCulture,
                $"seed {pair.mine.Seed}: {pair.mine.Volume:g12} m3, manifold-3d {pair.other.Volume:g12} m3 {pair.other.Status}, open {pair.other.Open}"))
            .ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} members differ:\n" + string.Join('\n', faults.Take(40)));
    }

    // Everything as half-spaces and regions, ends and rips too, so that the other side needs no knowledge of sticks.
    private static List<Step> AsPlanesAndCutters(RandomMember member, out Vector3d min, out Vector3d max)
    {
        var half = new Vector3d(20, member.Stock.Width / 2, member.Stock.Thickness / 2);
        (min, max) = (-half, half);
        return [.. new[] { member.Stock.Near, member.Stock.Far }.Concat(member.Stock.Rips).Select(p => new Step(p, null)), .. member.Steps];
    }

    private static string ToJson(Vector3d min, Vector3d max, List<Step> steps)
    {
        static double[] Numbers(Plane p) => [p.Normal.X, p.Normal.Y, p.Normal.Z, p.Offset];
        return JsonSerializer.Serialize(new
        {
            box = new[] { new[] { min.X, min.Y, min.Z }, [max.X, max.Y, max.Z] },
            steps = steps.Select(s => s.Cutter is { } cutter
                ? new Dictionary<string, object>(StringComparer.Ordinal) { ["cutter"] = cutter.Planes.Select(Numbers) }
                : new Dictionary<string, object>(StringComparer.Ordinal) { ["plane"] = Numbers(s.Plane!.Value) }),
        });
    }

    private static List<Answer> Ask(string lines)
    {
        using var node = Start();
        var answers = node.StandardOutput.ReadToEndAsync();
        var errors = node.StandardError.ReadToEndAsync();
        try
        {
            node.StandardInput.Write(lines);
            node.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended early; its exit code tells.
        }

        node.WaitForExit();
        Assert.True(node.ExitCode == 0, HowToInstall + "\n" + errors.GetAwaiter().GetResult());
        return [.. answers.GetAwaiter().GetResult().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => JsonSerializer.Deserialize<Answer>(line, s_options)!)];
    }

    private static readonly JsonSerializerOptions s_options = new(JsonSerializerDefaults.Web);

    private static Process Start()
    {
        var start = new ProcessStartInfo("node", [Path.Combine(Checkout(), "tests", "referees", "manifold.mjs")])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception)
        {
            Assert.Fail(HowToInstall);
            throw;
        }
    }

    private static string Checkout()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "BridgeForm.sln"))) folder = folder.Parent;
        return folder.FullName;
    }

    private sealed record Answer(double Volume, string Status, int Open);
}
