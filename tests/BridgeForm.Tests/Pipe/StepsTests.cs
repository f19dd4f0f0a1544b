using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Output.Gltf;
using BridgeForm.Project;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Pipe;

/// <summary>A build in steps ends with what one call makes, whatever was built before, and wherever that was left.</summary>
public sealed class StepsTests
{
    private const int Changes = 60;
    private const string Small = "name: Small (invented)\nsite: { span: 12 ft }\nframes: { spacing: 3 ft }\n";

    public static TheoryData<string> Samples => [.. Sample.Names];

    // What Steps has finished when it has taken so many steps: the rest is worked out by the next call.
    public static TheoryData<int, string> Left => new()
    {
        { 0, "Shape Layout Members Pieces Ropework Wind Contacts Checks" },
        { 1, "Members Pieces Ropework Wind Contacts Checks" },
        { 2, "Ropework Wind Contacts Checks" },
        { 3, "Ropework Wind Checks" },
        { 4, "Wind Checks" },
        { 5, "Checks" },
        { 6, "Checks" },
        { 8, "Checks" },
        { 9, "" },
    };

    [Fact]
    public void Samples_and_random_changes_in_steps_give_the_bytes_of_one_call()
    {
        var rebuild = new Rebuild();
        var built = 0;
        foreach (var (name, parameters) in SamplesAndChanges())
        {
            var last = rebuild.Steps(parameters).Last();
            var isBuilt = new Rebuild().TryAnswer(parameters, CancellationToken.None, out var model, out var fault);
            Assert.Equal(fault?.Message, last.Fault?.Message);
            Assert.Equal(isBuilt, last is { Stage: Stage.Checks, Model: not null });
            if (isBuilt)
            {
                built++;
                Assert.True(Files.Of(model!) == Files.Of(last.Model!), name);
            }
        }

        Assert.True(built > Changes / 2, $"{built} bridges built: they prove little");
    }

    [Fact]
    public void Left_after_any_number_of_steps_and_edited_the_end_is_the_same()
    {
        var garden = Bridges.Read(Small);
        var edits = Edits(garden);
        var fresh = edits.Select(e => Files.Of(Answer(e))).ToList();
        Assert.Distinct(fresh.Append(Files.Of(Answer(garden))));
        var rebuild = new Rebuild();
        for (var taken = 0; taken <= new Rebuild().Steps(garden).Count(); taken++)
        {
            for (var i = 0; i < edits.Count; i++)
            {
                Take(rebuild, garden, taken);
                Assert.True(fresh[i] == Files.Of(rebuild.Steps(edits[i]).Last().Model!), $"edit {i} after {taken} steps");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Left))]
    public void What_is_finished_when_it_is_left_is_not_made_again(int taken, string anew)
    {
        var (rebuild, garden) = (new Rebuild(), Bridges.Read(Small));
        Take(rebuild, garden, taken);
        var last = rebuild.Steps(garden).Last();
        Assert.Equal(anew.Split(' ', StringSplitOptions.RemoveEmptyEntries), rebuild.Anew.Select(s => s.ToString()));
        Assert.Equal(Files.Of(Answer(garden)), Files.Of(last.Model!));
    }

    /// <summary>Left in the midst of a step, by its token.</summary>
    [Fact]
    public void A_step_that_is_broken_off_can_be_taken_again()
    {
        var (rebuild, garden) = (new Rebuild(), Bridges.Read(Small));
        using var source = new CancellationTokenSource();
        var seen = new List<Stage>();
        Assert.Throws<OperationCanceledException>(() =>
        {
            foreach (var step in rebuild.Steps(garden, source.Token))
            {
                seen.Add(step.Stage);
                if (step.Stage == Stage.Contacts)
                {
                    source.Cancel();
                }
            }
        });
        Assert.Equal([Stage.Layout, Stage.Pieces, Stage.Contacts], seen);
        Assert.Equal(Files.Of(Answer(garden)), Files.Of(rebuild.Steps(garden).Last().Model!));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_can_be_drawn_before_the_loads_is_drawn_as_the_whole_is(string name)
    {
        var parameters = MadeParameters(name);
        var steps = new Rebuild().Steps(parameters).ToList();
        Assert.Equal(
            [Stage.Layout, Stage.Pieces, Stage.Contacts, Stage.Ropework, Stage.Wind, Stage.Checks],
            steps.Select(s => s.Stage).Distinct());
        Assert.Equal([Stage.Pieces, Stage.Checks], steps.Where(s => s.Model is not null).Select(s => s.Stage));
        var early = steps.First(s => s.Model is not null).Model!;
        Assert.Empty(early.Checks);
        Assert.Equal(File.ReadAllBytes(MadeSample.Of(name).FileOf("model.glb")), Glb(early));
    }

    private static IEnumerable<(string Name, BridgeParameters Parameters)> SamplesAndChanges()
    {
        var changes = RandomChanges.Of(seed: 3).Take(Changes).Chunk(Changes / Sample.Names.Count());
        return Sample.Names.Zip(changes).SelectMany(
            of => of.Second.Select(c => (c.Key, c.Parameters)).Prepend((of.First, MadeParameters(of.First))));
    }

    private static BridgeParameters MadeParameters(string name) => MadeSample.Of(name).Model.Parameters;

    private static List<BridgeParameters> Edits(BridgeParameters p) =>
    [
        p with { Site = p.Site with { Span = p.Site.Span + 0.1 } },
        p with { Loads = p.Loads with { Live = p.Loads.Live * 1.1 } },
        p with { Loads = p.Loads with { Wind = p.Loads.Wind * 1.1 } },
    ];

    private static void Take(Rebuild rebuild, BridgeParameters parameters, int steps)
    {
        using var taken = rebuild.Steps(parameters).GetEnumerator();
        for (var i = 0; i < steps; i++)
        {
            Assert.True(taken.MoveNext());
        }
    }

    private static BridgeModel Answer(BridgeParameters parameters)
    {
        Assert.True(new Rebuild().TryAnswer(parameters, CancellationToken.None, out var model, out var fault), fault?.Message);
        return model!;
    }

    private static byte[] Glb(BridgeModel model)
    {
        using var stream = new MemoryStream();
        GltfWriter.Write(model, solid => solid.Triangulate(), stream);
        return stream.ToArray();
    }
}
