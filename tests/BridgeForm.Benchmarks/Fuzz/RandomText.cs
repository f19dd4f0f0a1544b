using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>Random values of single keys of a project file, anywhere in the range of their definition, as people write them.</summary>
internal sealed class RandomText(Random random)
{
    // Most values lie within a factor of a few of the default, where bridges are; the rest anywhere.
    private const double NearDefault = 0.7;
    private const double Spread = 0.6;
    private const double AtABound = 0.05;

    // Of a range that begins at 0 the logarithm begins this share of its end above it.
    private const double SmallestShare = 1e-4;

    /// <summary>True in that share of the calls.</summary>
    public bool In(double share) => random.NextDouble() < share;

    /// <summary>Evenly between two numbers.</summary>
    public double Between(double least, double most) => least + (random.NextDouble() * (most - least));

    /// <summary>Evenly by ratio between two positive numbers.</summary>
    public double ByRatio(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    /// <summary>One of several.</summary>
    public T OneOf<T>(IReadOnlyList<T> several) => several[random.Next(several.Count)];

    /// <summary>A value of a key.</summary>
    public string Of(KeySpec spec) => spec.Shape switch
    {
        KeyShape.List => "[" + string.Join(", ", Enumerable.Range(0, Entries(spec)).Select(_ => Of(spec.Item!))) + "]",
        KeyShape.Map => Flow(spec),
        _ => Single(spec),
    };

    /// <summary>A mapping on one line: every required key, some of the others, one of those that exclude each other.</summary>
    public string Flow(KeySpec spec)
    {
        var crowded = spec.OneOf.Length > 0 ? OneOf(spec.OneOf) : null;
        var keys = spec.Keys.Where(k => k.Required || (In(0.5) && (crowded is null || k.Name == crowded || !spec.OneOf.Contains(k.Name))));
        return "{ " + string.Join(", ", keys.Select(k => $"{k.Name}: {Of(k)}")) + " }";
    }

    /// <summary>A quantity in SI units, written in one of its units.</summary>
    public string Quantity(QuantityKind kind, double value)
    {
        var unit = OneOf(Units.Of(kind).Units);
        var number = unit.FromSi(value);
        var figures = Math.Abs(number) < 1 ? "0.#####" : "0.###";
        return number.ToString(figures, CultureInfo.InvariantCulture) + " " + unit.Symbol;
    }

    /// <summary>A length in metres.</summary>
    public string Length(double metres) => Quantity(QuantityKind.Length, metres);

    /// <summary>A section: nominal or dressed.</summary>
    public string Section() => In(0.8)
        ? OneOf(Lumber.Names)
        : string.Create(CultureInfo.InvariantCulture, $"{ByRatio(15, 120):0.#} x {ByRatio(40, 300):0.#} mm");

    private int Entries(KeySpec spec) => random.Next(spec.Count.Least, Math.Min(spec.Count.Most, spec.Count.Least + 4) + 1);

    private string Single(KeySpec spec) => spec.Type switch
    {
        ValueForm.Choice => OneOf(spec.Choices),
        ValueForm.Flag => OneOf(["true", "false"]),
        ValueForm.Section => Section(),
        ValueForm.Rope => In(0.7) ? OneOf(RopeTable.Keys) : Flow(spec),
        ValueForm.Whole => spec.Choices.Length > 0 && In(0.5) ? OneOf(spec.Choices) : Whole(spec),
        ValueForm.Number => Number(spec),
        ValueForm.Quantity => Quantity(spec, OneOf(spec.Kinds)),
        _ => Words(spec.Name),
    };

    private string Words(string name) => name switch
    {
        "stock" => OneOf(["treated", "cedar"]),
        "species" => OneOf(SpeciesTable.All).Key,
        "grade" => OneOf(["no1", "no2", "select-structural", "mine"]),
        "size" => OneOf(["dimension", "beams", "posts", "timbers", "2x6"]),
        _ => OneOf(["\"some, text\"", "a-b_c", "'#1 & <b>'", "Überweg 2"]),
    };

    private string Whole(KeySpec spec)
    {
        var (least, most) = (Plain(spec.Least!), Plain(spec.Most!));
        var near = spec.Default is { } text && double.TryParse(text, CultureInfo.InvariantCulture, out var number) ? number : 4;
        return Math.Round(Within(least, most, near)).ToString("0", CultureInfo.InvariantCulture);
    }

    private string Number(KeySpec spec) =>
        Within(Plain(spec.Least!), Plain(spec.Most!), spec.Default is { } d ? Plain(d) : null).ToString(
            "0.####", CultureInfo.InvariantCulture);

    private string Quantity(KeySpec spec, QuantityKind kind)
    {
        if (spec.Least is null || spec.Most is null)
        {
            return Quantity(kind, ByRatio(0.001, 0.3));
        }

        if (In(AtABound))
        {
            return OneOf([spec.Least, spec.Most]);
        }

        var shown = spec.Default ?? spec.Example;
        var near = shown is not null && QuantityReader.Read(kind, shown) is { IsRead: true } reading ? reading.Value : (double?)null;
        return Quantity(kind, Within(QuantityReader.Read(kind, spec.Least).Value, QuantityReader.Read(kind, spec.Most).Value, near));
    }

    private double Within(double least, double most, double? near)
    {
        if (near is > 0 && In(NearDefault))
        {
            var normal = Enumerable.Range(0, 12).Sum(_ => random.NextDouble()) - 6;
            return Math.Clamp(near.Value * Math.Exp(Spread * normal), least, most);
        }

        return least < 0 ? Between(least, most) : ByRatio(Math.Max(least, most * SmallestShare), most);
    }

    private static double Plain(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
