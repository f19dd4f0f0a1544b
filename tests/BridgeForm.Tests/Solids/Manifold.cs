using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;
using BridgeForm.Solids;

namespace BridgeForm.Tests.Solids;

/// <summary>A box and the cuts made in it: half-spaces and regions, so that the other side needs no knowledge of sticks.</summary>
internal sealed record CutBody(Vector3d Min, Vector3d Max, IReadOnlyList<Step> Steps)
{
    /// <summary>Longer than any stick on either side, metres.</summary>
    private const double Reach = 20;

    /// <summary>A stick's ends and rips, then other cuts.</summary>
    public static CutBody Of(CutStock stock, IEnumerable<Step> cuts)
    {
        var half = new Vector3d(Reach, stock.Width / 2, stock.Thickness / 2);
        Plane[] planes = [stock.Near, stock.Far, .. stock.Rips];
        return new CutBody(-half, half, [.. planes.Select(p => new Step(p, null)), .. cuts]);
    }

    /// <summary>A stick with its own channels and holes.</summary>
    public static CutBody Of(CutStock stock) => Of(
        stock,
        stock.Channels.Select(c => new Step(null, StockCutters.Build(stock, c)))
            .Concat(stock.Holes.Select(h => new Step(null, StockCutters.Build(stock, h)))));
}

/// <summary>Asks manifold-3d 3.5.4, an outside library for mesh booleans (tests/referees/manifold.mjs).</summary>
internal static class Manifold
{
    private const string HowToInstall =
        "This test needs Node 20 or later and the packages in tests/referees: run `npm ci --prefix tests/referees` from the "
            + "checkout's root.";

    private static string ToJson(CutBody body)
    {
        static double[] Numbers(Plane p) => [p.Normal.X, p.Normal.Y, p.Normal.Z, p.Offset];
        var (min, max, steps) = body;
        return JsonSerializer.Serialize(new
        {
            box = new[] { new[] { min.X, min.Y, min.Z }, [max.X, max.Y, max.Z] },
            steps = steps.Select(s => s.Cutter is { } cutter
                ? new Dictionary<string, object>(StringComparer.Ordinal) { ["cutter"] = cutter.Planes.Select(Numbers) }
                : new Dictionary<string, object>(StringComparer.Ordinal) { ["plane"] = Numbers(s.Plane!.Value) }),
        });
    }

    /// <summary>Volume, status and open edges of each body, as manifold-3d finds them.</summary>
    public static List<Answer> Ask(IEnumerable<CutBody> bodies)
    {
        var lines = string.Concat(bodies.Select(b => ToJson(b) + "\n"));
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
        while (!File.Exists(Path.Combine(folder!.FullName, "BridgeForm.sln")))
        {
            folder = folder.Parent;
        }

        return folder.FullName;
    }

    public sealed record Answer(double Volume, string Status, int Open);
}
