using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>What the user asks for one unit of something.</summary>
/// <param name="Amount">Money for one unit.</param>
/// <param name="Money">Its name, such as <c>USD</c>.</param>
/// <param name="Unit">As written: <c>ft</c>, <c>m</c>, <c>ft2</c>, <c>m2</c>, <c>gal</c>, <c>l</c>, <c>h</c> or <c>each</c>.</param>
public sealed record Rate(double Amount, string Money, string Unit)
{
    /// <summary>Unit in SI: metres, square metres, cubic metres, hours, or one.</summary>
    public double Size => Unit switch
    {
        "ft" => Quantities.Units.MetresPerFoot,
        "ft2" => Quantities.Units.MetresPerFoot * Quantities.Units.MetresPerFoot,
        "gal" => Quantities.Units.CubicMetresPerGallon,
        "l" => 1 / Quantities.Units.LitresPerCubicMetre,
        _ => 1,
    };

    /// <summary>A rate as people write it, <c>4.20 USD/ft</c>; null where it is none in one of these units.</summary>
    internal static Rate? Of(string text, ImmutableArray<string> units)
    {
        var (space, slash) = (text.IndexOf(' ', StringComparison.Ordinal), text.LastIndexOf('/'));
        if (space < 1 || slash < space + 2)
        {
            return null;
        }

        var (money, unit) = (text[(space + 1)..slash].Trim(), text[(slash + 1)..].Trim());
        return double.TryParse(text[..space], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)
            && amount < LargestAmount && money.Length is > 0 and <= LongestMoney && money.All(char.IsLetter)
            && units.Contains(unit, StringComparer.Ordinal)
            ? new Rate(amount, money, unit)
            : null;
    }

    private const double LargestAmount = 1e7;
    private const int LongestMoney = 8;
}

/// <summary>What a quote is made with. Nothing is priced that has no rate here, but lumber, which has a price list.</summary>
public sealed record QuoteParameters
{
    /// <summary>Rates by what they are for: <c>rope</c>, <c>clip</c>, <c>shop</c> and so on.</summary>
    public ImmutableSortedDictionary<string, Rate> Rates { get; init; } =
        ImmutableSortedDictionary<string, Rate>.Empty.WithComparers(StringComparer.Ordinal);

    /// <summary>Hours for one cut of the saw; null where not given.</summary>
    public double? Cut { get; init; }

    /// <summary>Hours for one setting of the saw; null where not given.</summary>
    public double? SetUp { get; init; }

    /// <summary>Hours for one channel, laid out and routed; null where not given.</summary>
    public double? Channel { get; init; }

    /// <summary>Hours of the whole crew for one stage of the assembly; null where not given.</summary>
    public double? Stage { get; init; }

    /// <summary>Share of the sum kept for what was not foreseen; null where not given.</summary>
    public double? Contingency { get; init; }

    /// <summary>Share added for the builder; null where not given.</summary>
    public double? Margin { get; init; }

    /// <summary>Share added last; null where not given.</summary>
    public double? Tax { get; init; }
}

/// <summary>Keys under <c>quote</c>, how they are read, what they must agree on.</summary>
internal static class QuoteSection
{
    private const string Rates = "quote.rates";
    private const double MinutesPerHour = 60;

    private static readonly ImmutableArray<string> s_each = ["each"];
    private static readonly ImmutableArray<string> s_hour = ["h"];

    private static readonly ImmutableSortedDictionary<string, ImmutableArray<string>> s_units =
        new Dictionary<string, ImmutableArray<string>>(StringComparer.Ordinal)
        {
            ["rope"] = ["ft", "m"],
            ["clip"] = s_each,
            ["thimble"] = s_each,
            ["turnbuckle"] = s_each,
            ["shackle"] = s_each,
            ["keeper"] = s_each,
            ["net"] = ["ft2", "m2"],
            ["fastener"] = s_each,
            ["treatment"] = ["gal", "l"],
            ["shop"] = s_hour,
            ["erection"] = s_hour,
            ["delivery"] = s_each,
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    public static KeySpec Keys => Define.Map(
        "quote",
        "What a quote is made with; what has no rate is told in quantities alone",
        [
            Define.Named("rates", "Rates by what they are for, each with money and unit", Define.Text("", "Such as 4.20 USD/ft")) with
            { Choices = [.. s_units.Keys] },
            Minutes("cut", "Minutes for one cut of the saw"),
            Minutes("set_up", "Minutes for one setting of the saw"),
            Minutes("channel", "Minutes for one rope channel, laid out and routed"),
            Minutes("stage", "Minutes of the whole crew for one stage of the assembly, all together"),
            Share("contingency", "Kept for what was not foreseen, of the sum"),
            Share("margin", "Added for the builder, of sum and contingency"),
            Share("tax", "Added last, of all before it"),
        ]);

    public static QuoteParameters Read(FileValues v) => new()
    {
        Rates = v.Names(Rates).Where(n => s_units.ContainsKey(n) && v.Good($"{Rates}.{n}"))
            .Select(n => (Name: n, Rate: Rate.Of(v.Text($"{Rates}.{n}"), s_units[n])))
            .Where(r => r.Rate is not null)
            .ToImmutableSortedDictionary(r => r.Name, r => r.Rate!, StringComparer.Ordinal),
        Cut = v.NumberOrNull("quote.cut") / MinutesPerHour,
        SetUp = v.NumberOrNull("quote.set_up") / MinutesPerHour,
        Channel = v.NumberOrNull("quote.channel") / MinutesPerHour,
        Stage = v.NumberOrNull("quote.stage") / MinutesPerHour,
        Contingency = v.NumberOrNull("quote.contingency"),
        Margin = v.NumberOrNull("quote.margin"),
        Tax = v.NumberOrNull("quote.tax"),
    };

    /// <summary>Each rate has money and a unit of its kind; all are of one money.</summary>
    public static void Check(CheckedFile f)
    {
        string? money = null;
        foreach (var name in f.Values.Names(Rates).Where(n => s_units.ContainsKey(n) && f.Good($"{Rates}.{n}")))
        {
            var path = $"{Rates}.{name}";
            if (Rate.Of(f.Values.Text(path), s_units[name]) is not { } rate)
            {
                f.Stop(FaultCode.RateWithoutUnit, path, $"{name}: {QuantityReader.Quote(f.Values.Text(path))} is no rate; write an amount, "
                    + $"its money and {string.Join(" or ", s_units[name].Select(u => "/" + u))}, such as 4.20 USD/{s_units[name][0]}");
                continue;
            }

            money ??= rate.Money;
            if (!string.Equals(rate.Money, money, StringComparison.Ordinal))
            {
                f.Stop(FaultCode.RatesInTwoMoneys, path, $"{name}: '{rate.Money}', but the rates before it are in '{money}'; write all "
                    + "rates in one money");
            }
        }
    }

    private static KeySpec Minutes(string name, string description) => Define.Number(name, description, "0", "100000");

    private static KeySpec Share(string name, string description) =>
        Define.Quantity(QuantityKind.Share, name, description, "0 %", "100 %");
}
