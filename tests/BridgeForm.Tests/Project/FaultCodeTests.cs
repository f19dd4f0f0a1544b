using BridgeForm.Frames;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Project;

/// <summary>docs/faults.md, and that every code on it is told of some file, printed at the end of its line.</summary>
public sealed class FaultCodeTests
{
    private static IEnumerable<FaultRow> Rows => FaultTable.Groups.SelectMany(g => g.Rows);

    public static TheoryData<string> Ids => [.. Rows.Select(r => r.Id)];

    [Fact]
    public void The_committed_page_is_what_the_program_writes()
    {
        var path = Path.Combine(Sample.Root, "docs", "faults.md");
        if (Sample.Updating)
        {
            File.WriteAllText(path, FaultPage.Markdown());
        }

        Assert.Equal(FaultPage.Markdown(), File.ReadAllText(path));
    }

    [Fact]
    public void Every_code_has_one_row_and_an_id_of_its_own()
    {
        Assert.Equal(Enum.GetValues<FaultCode>().Order(), Rows.Select(r => r.Code).Order());
        Assert.Equal(Rows.Count(), Rows.DistinctBy(r => r.Id).Count());
        Assert.All(Rows, r => Assert.Matches("^[a-z]+(-[a-z]+)*$", r.Id));
        Assert.All(Rows, r => Assert.All([r.Cause, r.Cure], text => Assert.Matches(@"^[A-Z`][^|\n]*\.$", text)));
    }

    /// <summary>A project or price list that is wrong in this way is told with this code.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Told_of_a_file_that_has_the_fault(string id)
    {
        var code = Rows.Single(r => string.Equals(r.Id, id, StringComparison.Ordinal)).Code;
        Assert.Contains(id, Told(code), StringComparer.Ordinal);
    }

    [Fact]
    public void The_code_stands_at_the_end_of_the_line() =>
        Assert.EndsWith(
            " or 1.2 m [not-a-quantity]", Assert.Single(Examples.Read("name: a\nsite: { span: 30 }\n").Lines), StringComparison.Ordinal);

    private static IEnumerable<string> Told(FaultCode code)
    {
        if (FaultFiles.Projects.TryGetValue(code, out var text))
        {
            var reading = Examples.Read(text);
            return reading.Faults.Select(f => f.Code);
        }

        if (FaultFiles.Prices.TryGetValue(code, out var prices))
        {
            return PriceReader.Read(prices, "prices.csv", Bridges.Read(Bridges.Garden).Stock).Faults.Select(f => f.Code);
        }

        return FaultFiles.Impossible.TryGetValue(code, out var impossible) ? Misfits(impossible) : [Built(code)];
    }

    // By the fault of the whole build, and as the file is told of it.
    private static IEnumerable<string> Misfits(string text)
    {
        var reading = ProjectReader.Read(text, "bridge.yaml", Bridges.Catalogue);
        Assert.Empty(reading.Lines);
        Assert.False(Bridge.TryBuild(reading.Parameters!, out _, out var fault));
        Assert.Equal(fault.Code, fault.Misfits[0].Code);
        return FitFaults.Tell(reading, fault.Misfits).Select(f => f.Code);
    }

    // What no file is known to reach, by values that a file cannot give.
    private static string Built(FaultCode code)
    {
        var garden = Bridges.Read(Bridges.Garden);
        if (code == FaultCode.NoShape)
        {
            Assert.False(Bridge.TryBuild(garden with { Ropes = garden.Ropes with { Sag = 0 } }, out _, out var fault));
            return fault.Code;
        }

        if (code == FaultCode.DeckTurnsOver)
        {
            var layout = Bridges.Layout(garden);
            return LayoutFit.Check(layout with { Deck = layout.Deck with { Points = [.. layout.Deck.Points.Reverse()] } })[0].Code;
        }

        Assert.Equal(FaultCode.PieceNotCut, code);
        return Rebuild.Cut(garden, [new MemberGroup("B01", [InsideOut])], CancellationToken.None).Fault!.Code;
    }

    // A stick whose far end lies before its near one.
    private static Member InsideOut => new(
        "B01/rail-left-1", Role.Rail, Side.Left, "cedar", "1x4", Placement.FromLengthAndThickness(default, Vector3d.UnitX, Vector3d.UnitZ),
        new CutStock(0.09, 0.019, new Plane(-Vector3d.UnitX, 0), new Plane(Vector3d.UnitX, -1)));
}
