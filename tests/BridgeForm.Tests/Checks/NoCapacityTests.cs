using System.Text;
using System.Text.Json;
using BridgeForm.Checks;
using BridgeForm.Cli.Text;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;
using BridgeForm.Output.Report;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Checks;

/// <summary>No number without a finite value passes into a check, a text or a page; what has no capacity never holds.</summary>
public sealed class NoCapacityTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(0, 0)]
    [InlineData(1, -2)]
    [InlineData(-1, -2)]
    public void Nothing_to_carry_it_fails(double demand, double capacity)
    {
        var result = Outcome.AtMost("x", "X", demand, capacity, "N", "test", "test");
        Assert.Equal(CheckStatus.Fail, result.Status);
        Assert.Null(result.Ratio);
        Assert.True(result.HasNoCapacity);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_check_takes_no_such_number(double number)
    {
        Assert.Throws<NotFiniteNumberException>(() => Result(number, 1, 1));
        Assert.Throws<NotFiniteNumberException>(() => Result(1, 1, 1) with { Demand = number });
        var ratio = Result(1, 1, number);
        Assert.Equal((null, CheckStatus.Fail), (ratio.Ratio, ratio.Status));
        Assert.Equal(CheckStatus.Fail, (ratio with { Status = CheckStatus.Pass }).Status);
        Assert.Null(Result(1, number, 1).Capacity);
        Assert.Null((Result(1, 1, 1) with { Ratio = number }).Ratio);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void No_text_and_no_page_takes_it(double number)
    {
        Assert.Throws<NotFiniteNumberException>(() => NumberText.Rounded(number, 2));
        Assert.Throws<NotFiniteNumberException>(() => NumberText.Fixed(number, 2));
        Assert.Throws<NotFiniteNumberException>(() => new CheckWords(UnitSystem.Metric).Force(number));
        Assert.Throws<NotFiniteNumberException>(() => new SheetPoint(number, 0));
        Assert.Throws<NotFiniteNumberException>(() => new SheetPoint(0, 0) with { Y = number });
        Assert.Throws<NotFiniteNumberException>(() => new SheetVertex(0, 0, number));
    }

    [Fact]
    public void It_prints_as_no_capacity_and_is_null_in_the_report()
    {
        var model = Bridges.Build(Bridges.Garden);
        model = model with { Checks = [Outcome.AtMost("x-y", "X of Y", 1, 0, "N", "test", "test")] };
        using var terminal = new StringWriter();
        CheckText.Write(terminal, model, quiet: true);
        Assert.Contains("FAILS     no capacity  X of Y (x-y)", terminal.ToString(), StringComparison.Ordinal);
        var check = Report(model).GetProperty("checks")[0];
        Assert.Equal(("fail", JsonValueKind.Null), (check.GetProperty("status").GetString(), check.GetProperty("ratio").ValueKind));
        var words = DrawingSheets.Draw(model).Pages.SelectMany(p => p.Content.Entities.OfType<SheetText>()).Select(t => t.Text);
        Assert.Contains("no capacity", words);
    }

    private static JsonElement Report(BridgeModel model)
    {
        using var stream = new MemoryStream();
        ReportWriter.Write(model, () => [], stream);
        return JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray())).RootElement;
    }

    private static CheckResult Result(double demand, double? capacity, double? ratio) =>
        new("x", "X", CheckStatus.Pass, demand, capacity, "N", ratio, "test", "test");
}
