using BridgeForm.Roles;

namespace BridgeForm.Tests.Stocking;

public class AssemblyOrderTests
{
    private const string Across = "deck: { layout: across, board: { section: 2x6 }, stringer: { section: 2x6, count: 3 } }\n";

    public static TheoryData<string, string> Makes
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (
                var bridge in new[]
                {
                    Bridges.Garden,
                    Bridges.Inclined,
                    Bridges.Garden + "\n" + Across,
                    Bridges.Garden.Replace("30 ft", "27 ft", StringComparison.Ordinal),
                })
            {
                data.Add(bridge, "erection: both-ends\n");
                data.Add(bridge, "erection: one-end\n");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public void What_each_part_rests_on_is_already_there(string bridge, string erection)
    {
        var model = Bridges.Build(bridge.TrimEnd() + "\n" + erection);
        var roles = model.Pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Role))).ToDictionary(
            p => p.Id, p => p.Role, StringComparer.Ordinal);
        var built = new HashSet<string>(StringComparer.Ordinal);
        foreach (var step in model.Assembly())
        {
            foreach (var part in step.Parts)
            {
                foreach (var carrier in Carriers(part, roles, model))
                {
                    Assert.True(built.Contains(carrier), $"step {step.Number}: {part} before {carrier}");
                }

                Assert.True(built.Add(part), $"{part} is added twice");
            }
        }

        Assert.Equal(roles.Count, built.Count);
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public void No_bay_is_begun_before_both_its_frames_stand(string bridge, string erection)
    {
        var model = Bridges.Build(bridge.TrimEnd() + "\n" + erection);
        var standing = new HashSet<string>(StringComparer.Ordinal);
        foreach (var step in model.Assembly())
        {
            if (step.Work is AssemblyWork.HangFrame or AssemblyWork.SetEndFrame)
            {
                standing.Add(step.Where);
            }
            else if (step.Work != AssemblyWork.BuildFrame)
            {
                var bay = int.Parse(step.Where.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);
                Assert.Contains(model.Frames[bay - 1].Name, standing);
                Assert.Contains(model.Frames[bay].Name, standing);
            }
        }

        Assert.Equal(model.Frames.Select(f => f.Name).Order(), standing.Order());
    }

    [Fact]
    public void From_both_ends_the_two_sides_keep_pace()
    {
        var model = Bridges.Build(Bridges.Garden);
        var last = model.Frames.Length - 1;
        foreach (var stage in model.Assembly().Where(s => s.Work == AssemblyWork.HangFrame).GroupBy(s => s.Stage))
        {
            var frames = stage.Select(s => Index(model, s.Where)).ToHashSet();
            Assert.All(frames, i => Assert.Contains(last - i, frames));
        }
    }

    [Fact]
    public void From_one_end_frames_are_hung_in_order()
    {
        var model = Bridges.Build(Bridges.Garden + "\n" + "erection: one-end\n");
        var hung = model.Assembly().Where(s => s.Work == AssemblyWork.HangFrame).Select(s => Index(model, s.Where));
        Assert.Equal(Enumerable.Range(1, model.Frames.Length - 2), hung);
    }

    [Fact]
    public void Rails_go_before_caps_in_every_bay()
    {
        var steps = Bridges.Build(Bridges.Garden).Assembly();
        Assert.All(
            steps.Where(s => s.Work == AssemblyWork.FixCaps),
            cap => Assert.True(steps.Single(s => s.Work == AssemblyWork.FixRails && s.Where == cap.Where).Number < cap.Number));
    }

    private static int Index(BridgeModel model, string frame) => Array.FindIndex([.. model.Frames], f => f.Name == frame);

    /// <summary>What a part rests on, by what the parts of a bridge are (not by how the order is made).</summary>
    private static IEnumerable<string> Carriers(string part, IReadOnlyDictionary<string, Role> roles, BridgeModel model)
    {
        var owner = part[..part.IndexOf('/', StringComparison.Ordinal)];
        var frames = owner[0] == 'F' ? [owner] : Ends(owner, model);
        var side = part.Contains("left", StringComparison.Ordinal) ? "left" : "right";
        return roles[part] switch
        {
            Role.Post or Role.Packer => [owner + "/base"],
            Role.Brace => [owner + "/base", $"{owner}/post-{side}"],
            Role.Board or Role.Stringer =>
                frames.Select(f => f + "/base").Concat(frames.Select(f => f + "/packer").Where(roles.ContainsKey)),
            Role.Tread => roles.Keys.Where(id => id.StartsWith(owner + "/stringer", StringComparison.Ordinal)),
            Role.Rail => frames.Select(f => $"{f}/post-{side}"),
            Role.Cap => frames.Select(f => $"{f}/post-{side}")
                .Concat(roles.Keys.Where(id => id.StartsWith($"{owner}/rail-{side}", StringComparison.Ordinal))),
            _ => [],
        };
    }

    private static string[] Ends(string bay, BridgeModel model)
    {
        var index = int.Parse(bay.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture);
        return [model.Frames[index - 1].Name, model.Frames[index].Name];
    }
}
