using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Loads;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Stocking;

namespace BridgeForm.Output.ShopSheets;

/// <summary>A line of the quote.</summary>
/// <param name="Group">What it belongs to.</param>
/// <param name="Item">What.</param>
/// <param name="Quantity">How many, or how much, with its unit; empty where the file does not say.</param>
/// <param name="Rate">As the user wrote it; empty for none.</param>
/// <param name="Amount">Money; null without a rate.</param>
public sealed record QuoteLine(string Group, string Item, string Quantity, string Rate, double? Amount);

/// <summary><c>quote.csv</c> and <c>quote.pdf</c>: what the bridge takes, and what of it costs where the user gave a rate.</summary>
public static class QuoteSheet
{
    private static readonly (string Rate, string Begins)[] s_hardware =
    [
        ("keeper", "Keeper straps"), ("fastener", "Fasteners"), ("clip", "Rope clips"), ("thimble", "Thimbles"),
        ("turnbuckle", "Turnbuckles"), ("shackle", "Shackles"),
    ];

    private const string NetRow = "Guard netting";

    /// <summary>All lines, without sums.</summary>
    public static ImmutableArray<QuoteLine> Lines(BridgeModel model) =>
    [
        .. model.StockPlan.Jobs.Select(Lumber),
        .. Rope(model),
        .. model.Hardware().Where(h => !string.Equals(h.Item, "Rope " + model.Parameters.Ropes.Rope.Name, StringComparison.Ordinal))
            .Where(h => !h.Item.StartsWith(NetRow, StringComparison.Ordinal))
            .Select(h => Hardware(model.Parameters.Quote, h)),
        .. Net(model),
        Treatment(model),
        .. Work(model),
    ];

    /// <summary>Sum of what is priced, and what is added to it where the file says so; empty where nothing is priced.</summary>
    public static ImmutableArray<QuoteLine> Sums(QuoteParameters quote, ImmutableArray<QuoteLine> lines)
    {
        if (!lines.Any(l => l.Amount is not null))
        {
            return [];
        }

        var sum = lines.Sum(l => l.Amount ?? 0);
        var sums = ImmutableArray.CreateBuilder<QuoteLine>();
        sums.Add(new QuoteLine("sum", "of what is priced", "", "", sum));
        Add("contingency", quote.Contingency);
        Add("margin", quote.Margin);
        Add("tax", quote.Tax);
        sums.Add(new QuoteLine("total", "of what is priced", "", "", sum));
        return sums.ToImmutable();

        void Add(string what, double? share)
        {
            if (share is { } part)
            {
                sums.Add(new QuoteLine(what, "", "", QuantityText.Share(part), sum * part));
                sum += sum * part;
            }
        }
    }

    /// <summary>What has no price, in words; empty where everything has one.</summary>
    public static string Unpriced(ImmutableArray<QuoteLine> lines) =>
        lines.Where(l => l.Amount is null).Select(l => l.Item).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } without
            ? $"Not priced, for want of a price, a rate, or the time that one takes: {string.Join("; ", without)}."
            : "";

    /// <summary>The table as text.</summary>
    public static string Csv(BridgeModel model)
    {
        var lines = Lines(model);
        return CsvText.Write(
            ["Group", "Item", "Quantity", "Rate", "Amount", "Money"],
            [
                .. lines.Concat(Sums(model.Parameters.Quote, lines)).Select(l => Row(l, model.Parameters.Quote)),
                .. Unpriced(lines) is { Length: > 0 } text ? [[text]] : Array.Empty<IReadOnlyList<string>>(),
            ]);
    }

    /// <summary>The sheet.</summary>
    public static SheetBook Draw(BridgeModel model)
    {
        var paper = Paper.Named(model.Parameters.Shop.Paper);
        var words = SheetWords.For(model, "Quote");
        var frame = PageFrame.On(paper, words);
        var flow = new TableFlow(frame.Body);
        var lines = Lines(model);
        var quote = model.Parameters.Quote;
        flow.Add(new FlowTable(
            "What it takes and costs",
            $"Amounts in {Money(quote)}, only where a price or rate was given. {Unpriced(lines)}",
            [
                new("Group"), new("Item", 0.060), new("Qty", 0.030, Figures: true), new("Rate", 0.030, Figures: true),
                new("Amount", Figures: true),
            ],
            [
                .. lines.Select(l => Row(l, strong: false)),
                .. Sums(quote, lines).Select(l => Row(l, strong: l.Group is "total")),
            ]));
        return new SheetBook(words.Title, [.. flow.Pages.Select((p, i) => frame.Page(p.Entities, i + 1, flow.Pages.Count))]);

        static FlowRow Row(QuoteLine l, bool strong) => new(
            [l.Group, l.Item, l.Quantity, l.Rate, l.Amount is { } amount ? NumberText.Fixed(amount, 2) : ""], strong);
    }

    private static string Money(QuoteParameters quote) =>
        quote.Rates.Values.Select(r => r.Money).FirstOrDefault() ?? "the money of the price list";

    private static IReadOnlyList<string> Row(QuoteLine line, QuoteParameters quote) =>
    [
        line.Group, CsvText.Users(line.Item), line.Quantity, CsvText.Users(line.Rate),
        line.Amount is { } amount ? NumberText.Fixed(amount, 2) : "",
        line.Amount is null ? "" : quote.Rates.Values.Select(r => r.Money).FirstOrDefault() ?? "",
    ];

    // Spare boards are bought as well; what no board on sale is long enough for is in no sum, and said.
    private static QuoteLine Lumber(StockJob job)
    {
        var spare = job.Spare?.Count ?? 0;
        var boards = string.Create(
            CultureInfo.InvariantCulture, $"{job.Boards.Length + spare} boards{(spare > 0 ? $", {spare} spare" : "")}");
        var missing = job.TooLong.IsEmpty ? "" : ", without pieces that no board on sale is long enough for: "
            + string.Join(", ", job.TooLong.Select(t => t.Mark).Distinct(StringComparer.Ordinal));
        var isPriced = job.Boards.Length > 0 && job.TooLong.IsEmpty && job.Boards.All(b => b.Price is not null)
            && job.Spare is not { Price: null };
        return new QuoteLine(
            "lumber", $"{job.Stock} {job.Section}{missing}", boards, job.ByPrice ? "price list" : "",
            isPriced ? job.Boards.Sum(b => b.Price!.Value) + (job.Spare?.Price ?? 0) : null);
    }

    private static IEnumerable<QuoteLine> Rope(BridgeModel model)
    {
        var (parameters, work) = (model.Parameters, model.Ropework);
        if ((RopeTape.Of(parameters, work)?.CutLength ?? work.Cut?.Length) is { } each)
        {
            yield return Line(parameters.Quote, "ropes", "rope", parameters.Ropes.Rope.Name, 2 * each, Long(2 * each, parameters.Units));
            yield break;
        }

        // Nobody knows how long its ends are: no sum has it, and the customer must see that.
        yield return new QuoteLine(
            "ropes", parameters.Ropes.Rope.Name + ", two, length with their ends by your engineer", "", "", null);
    }

    private static QuoteLine Hardware(QuoteParameters quote, HardwareItem item)
    {
        var name = Array.Find(s_hardware, h => item.Item.StartsWith(h.Begins, StringComparison.Ordinal)).Rate ?? "";
        return item.Quantity is { } count
            ? Line(quote, "hardware", name, item.Item, count, string.Create(CultureInfo.InvariantCulture, $"{count}"))
            : new QuoteLine("hardware", item.Item, "", "", null);
    }

    // By its area: a strip of any length is one item of hardware.
    private static IEnumerable<QuoteLine> Net(BridgeModel model)
    {
        if (model.Hardware().FirstOrDefault(h => h.Item.StartsWith(NetRow, StringComparison.Ordinal)) is { } row)
        {
            var area = model.NetArea();
            yield return Line(
                model.Parameters.Quote, "hardware", "net", row.Item, area, new QuantityText(model.Parameters.Units).Area(area));
        }
    }

    private static QuoteLine Treatment(BridgeModel model)
    {
        var volume = TreatmentPlan.Plan(model.Pieces, model.Parameters).Volume;
        var text = model.Parameters.Units == UnitSystem.Metric
            ? NumberText.Fixed(volume * Quantities.Units.LitresPerCubicMetre, 2) + " l"
            : NumberText.Fixed(volume / Quantities.Units.CubicMetresPerGallon, 2) + " gal";
        return Line(model.Parameters.Quote, "treatment", "treatment", "field preservative", volume, text);
    }

    // Hours only where the file says how long one takes; else how often it is done.
    private static IEnumerable<QuoteLine> Work(BridgeModel model)
    {
        var quote = model.Parameters.Quote;
        var (cuts, settings) = (SawSetup.List(model).Sum(s => s.Count), SawSheet.Settings(model));
        var stages = model.Assembly().Select(s => s.Stage).DefaultIfEmpty(0).Max();
        yield return Hours("shop", "cuts of the saw", cuts, quote.Cut);
        yield return Hours("shop", "settings of the saw", settings, quote.SetUp);
        var channels = model.Pieces.Sum(p => p.Shape.Channels.Length * p.Occurrences.Length);
        yield return Hours("shop", "channels", channels, quote.Channel);
        yield return Hours(
            "erection", "stages of the assembly (not in it: landings, anchors, marking, eyes, hoisting, sighting, correcting)", stages,
            quote.Stage);
        if (quote.Rates.ContainsKey("delivery"))
        {
            yield return Line(quote, "delivery", "delivery", "delivery", 1, "1");
        }

        QuoteLine Hours(string rate, string item, int count, double? each) => each is { } hours
            ? Line(
                quote, rate, rate, item, count * hours,
                string.Create(CultureInfo.InvariantCulture, $"{count}: {NumberText.Fixed(count * hours, 1)} h"))
            : new QuoteLine(rate, item, string.Create(CultureInfo.InvariantCulture, $"{count}"), "", null);
    }

    private static QuoteLine Line(QuoteParameters quote, string group, string rate, string item, double quantity, string text) =>
        quote.Rates.TryGetValue(rate, out var found)
            ? new QuoteLine(
                group, item, text, $"{NumberText.Rounded(found.Amount, 4)} {found.Money}/{found.Unit}",
                quantity / found.Size * found.Amount)
            : new QuoteLine(group, item, text, "", null);

    private static string Long(double metres, UnitSystem units) => units == UnitSystem.Metric
        ? NumberText.Fixed(metres, 2) + " m"
        : NumberText.Fixed(metres / Quantities.Units.MetresPerFoot, 1) + " ft";
}
