using BridgeForm.Project;

namespace BridgeForm.Tests.Pipe;

/// <summary>Which stages are worked out anew when something changes, and which are kept.</summary>
public sealed class RebuildTests
{
    private static readonly BridgeParameters s_garden = Bridges.Read(Bridges.Garden);

    private static readonly BoardPrice s_price = new(s_garden.Stock[0].Name, "2x6", s_garden.Stock[0].Lengths[0], 10);

    public static TheoryData<string, string> Changes => new()
    {
        { "name", "" },
        { "order of hanging", "" },
        { "price", "Stock" },
        { "list of prices", "Checks Stock Remedies" },
        { "live load", "Ropework Checks Remedies" },
        { "wind", "Wind Checks Remedies" },
        { "ground", "Ropework Checks Remedies" },
        { "temperatures", "Ropework Wind Checks Remedies" },
        { "use", "Ropework Wind Checks Remedies" },
        { "species", "Checks Remedies" },
        { "fasteners", "Checks Remedies" },
        { "lengths on sale", "Ropework Checks Stock Remedies" },
        { "kerf", "Pieces Contacts Checks Stock Remedies" },
        { "span", "Shape Layout Members Pieces Ropework Wind Contacts Checks Stock Remedies" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_change_reaches_the_stages_that_look_at_it(string what, string anew)
    {
        var rebuild = new Rebuild();
        var before = s_garden with { PriceList = new PriceList([s_price]) };
        Assert.True(rebuild.TryWhole(before, CancellationToken.None, out _, out var fault), fault?.Message);
        Assert.Equal(Enum.GetValues<Stage>(), rebuild.Anew);
        Assert.True(rebuild.TryWhole(Changed(before, what), CancellationToken.None, out var model, out fault), fault?.Message);
        Assert.Equal(anew.Split(' ', StringSplitOptions.RemoveEmptyEntries), rebuild.Anew.Select(s => s.ToString()));
        Assert.Equal(Changed(before, what).Name, model!.Parameters.Name);
    }

    /// <summary>The same file read twice gives other lists with the same values.</summary>
    [Fact]
    public void The_same_file_again_works_nothing_out()
    {
        var rebuild = new Rebuild();
        Assert.True(rebuild.TryWhole(Bridges.Read(Bridges.Garden), CancellationToken.None, out _, out _));
        Assert.True(rebuild.TryWhole(Bridges.Read(Bridges.Garden), CancellationToken.None, out _, out _));
        Assert.Empty(rebuild.Anew);
    }

    [Fact]
    public void The_answer_leaves_out_stock_and_remedies_and_the_whole_adds_them()
    {
        var rebuild = new Rebuild();
        Assert.True(rebuild.TryAnswer(s_garden, CancellationToken.None, out var answer, out _));
        Assert.DoesNotContain(Stage.Stock, rebuild.Anew);
        Assert.DoesNotContain(Stage.Remedies, rebuild.Anew);
        Assert.Empty(answer!.StockPlan.Jobs);
        Assert.True(rebuild.TryWhole(s_garden, CancellationToken.None, out var whole, out _));
        Assert.Equal((Stage[])[Stage.Stock, Stage.Remedies], rebuild.Anew.AsEnumerable());
        Assert.Equal(answer.Checks, whole!.Checks);
        Assert.NotEmpty(whole.StockPlan.Jobs);
    }

    [Fact]
    public void The_verdict_leaves_out_the_stock_alone()
    {
        var rebuild = new Rebuild();
        Assert.True(rebuild.TryVerdict(s_garden, CancellationToken.None, out var verdict, out _));
        Assert.Contains(Stage.Remedies, rebuild.Anew);
        Assert.Empty(verdict!.StockPlan.Jobs);
        Assert.True(rebuild.TryWhole(s_garden, CancellationToken.None, out var whole, out _));
        Assert.Equal((Stage[])[Stage.Stock], rebuild.Anew.AsEnumerable());
        Assert.Equal(whole!.Remedies, verdict.Remedies);
    }

    /// <summary>One thread takes the works in their order, pieces first; what the caller does side by side gives the same.</summary>
    [Fact]
    public void The_caller_says_how_works_run()
    {
        var sizes = new List<int>();
        void Backwards(params Action[] works)
        {
            sizes.Add(works.Length);
            foreach (var work in works.Reverse())
            {
                work();
            }
        }

        Assert.True(new Rebuild(Backwards).TryWhole(s_garden, CancellationToken.None, out var model, out _));
        Assert.Equal([3, 2, 3], sizes);
        Assert.Equal(Files.Of(Bridges.Build(s_garden)), Files.Of(model!));
    }

    /// <summary>A cancelled call leaves nothing half done behind, whichever stage it was in.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_call_that_is_broken_off_can_be_made_again(int seed)
    {
        var random = new Random(seed);
        var rebuild = new Rebuild();
        for (var i = 0; i < 5; i++)
        {
            using var source = new CancellationTokenSource();
            source.CancelAfter(TimeSpan.FromMilliseconds(random.Next(1, 40)));
            var parameters = Changed(s_garden, i % 2 == 0 ? "span" : "live load");
            try
            {
                rebuild.TryWhole(parameters, source.Token, out _, out _);
            }
            catch (OperationCanceledException)
            {
                Assert.True(source.IsCancellationRequested);
            }
        }

        Assert.True(rebuild.TryWhole(s_garden, CancellationToken.None, out var model, out _));
        Assert.Equal(Files.Of(Bridges.Build(s_garden)), Files.Of(model!));
    }

    /// <summary>Cancelled before it begins, no stage is worked out.</summary>
    [Fact]
    public void A_token_that_is_set_already_stops_the_first_stage()
    {
        var rebuild = new Rebuild();
        Assert.Throws<OperationCanceledException>(() => rebuild.TryWhole(s_garden, new CancellationToken(canceled: true), out _, out _));
        Assert.Empty(rebuild.Anew);
    }

    private static BridgeParameters Changed(BridgeParameters p, string what) => what switch
    {
        "name" => p with { Name = "Another (invented)" },
        "order of hanging" => p with { Erection = ErectionOrder.OneEnd },
        "price" => p with { PriceList = new PriceList([s_price with { Price = 12 }]) },
        "list of prices" => p with { PriceList = null },
        "live load" => p with { Loads = p.Loads with { Live = p.Loads.Live * 1.1 } },
        "wind" => p with { Loads = p.Loads with { Wind = p.Loads.Wind * 1.1 } },
        "ground" => p with { Site = p.Site with { Ground = [new GroundPoint(0, -3), new GroundPoint(p.Site.Span, -3)] } },
        "temperatures" => p with { Site = p.Site with { Temperatures = p.Site.Temperatures.Add(p.Site.Temperatures.Max() + 3) } },
        "use" => p with { Use = BridgeUse.Public },
        "species" => p with { Species = p.Species.Add(new("own-wood", 0.5, false, "invented")) },
        "fasteners" => p with { Fasteners = p.Fasteners.SetItem("post-foot", 2) },
        "lengths on sale" => p with { Stock = [.. p.Stock.Select(s => s with { Lengths = s.Lengths.Add(6.1) })] },
        "kerf" => p with { Shop = p.Shop with { Kerf = p.Shop.Kerf + 0.001 } },
        "span" => p with { Site = p.Site with { Span = p.Site.Span + 0.1 } },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such change."),
    };
}
