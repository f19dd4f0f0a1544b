using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Reading;

/// <summary>Reads one value by its definition: an entry without place, or a problem in words.</summary>
internal static class ValueReader
{
    private const int LongestText = 200;

    public readonly record struct Result(Entry? Entry, FaultCode Code, string? Problem)
    {
        public static implicit operator Result(Entry entry) => new(entry, default, null);

        public static implicit operator Result((FaultCode Code, string Problem) fault) => new(null, fault.Code, fault.Problem);
    }

    public static Result Read(KeySpec spec, string text, UnitSystem units) => spec.Type switch
    {
        ValueForm.Text => Free(spec, text),
        ValueForm.Choice => Choice(spec, text),
        ValueForm.Whole => Whole(spec, text),
        ValueForm.Number => Number(spec, text),
        ValueForm.Flag => Flag(spec, text),
        ValueForm.Section => Section(text),
        ValueForm.Quantity => Quantity(spec, text, units),
        _ => Plain(text),
    };

    private static Entry Plain(string text) => new(default, true, true) { Text = text };

    private static Result Free(KeySpec spec, string text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return (FaultCode.BadText, $"{spec.Name} is empty; write a text");
        }

        return text.Length > LongestText || !PlainLine.IsText(text)
            ? (FaultCode.BadText, FormattableString.Invariant($"{spec.Name} must be one line of at most {LongestText} characters, none of ")
                + "which controls a terminal or turns text around")
            : Plain(text);
    }

    private static Result Choice(KeySpec spec, string text)
    {
        if (spec.Choices.Contains(text, StringComparer.Ordinal))
        {
            return Plain(text);
        }

        var nearest = NearestWord.Find(text, spec.Choices);
        var hint = nearest is null ? "" : $"did you mean {nearest}? ";
        return (FaultCode.UnknownChoice, $"{QuantityReader.Quote(text)} is not a value of {spec.Name}; {hint}write "
            + $"{string.Join(", ", spec.Choices[..^1])} or {spec.Choices[^1]}");
    }

    private static Result Whole(KeySpec spec, string text)
    {
        if (spec.Choices.Contains(text, StringComparer.Ordinal))
        {
            return Plain(text) with { Number = double.NaN };
        }

        var word = spec.Choices.Length > 0 ? $", or {spec.Choices[0]}" : "";
        return int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Within(spec, number)
            ? Plain(text) with { Number = number }
            : (FaultCode.NotWhole, $"{Named(spec)}{QuantityReader.Quote(text)} is not a whole number from {spec.Least} to "
                + $"{spec.Most}{word}");
    }

    private static Result Number(KeySpec spec, string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Within(spec, number)
            ? Plain(text) with { Number = number }
            : (FaultCode.NotNumber, $"{Named(spec)}{QuantityReader.Quote(text)} is not a number from {spec.Least} to {spec.Most}");

    private static Result Flag(KeySpec spec, string text) => text switch
    {
        "true" => Plain(text) with { Number = 1 },
        "false" => Plain(text),
        _ => (FaultCode.NotFlag, $"{QuantityReader.Quote(text)} is not a value of {spec.Name}; write true or false"),
    };

    private static Result Section(string text)
    {
        var reading = SectionReader.Read(text);
        return reading.Section is { } section ? Plain(text) with { Section = section } : (FaultCode.NotSection, reading.Problem!);
    }

    private static Result Quantity(KeySpec spec, string text, UnitSystem units)
    {
        var problem = "";
        foreach (var kind in spec.Kinds)
        {
            var reading = QuantityReader.Read(kind, text);
            if (reading.IsRead)
            {
                return AllowedRange.Problem(spec, kind, reading.Value, text, units) is { } outside
                    ? (FaultCode.OutOfRange, outside)
                    : Plain(text) with { Number = reading.Value, Kind = kind };
            }

            if (reading.TooLarge)
            {
                return (FaultCode.OutOfRange, $"{Named(spec)}{reading.Problem}{AllowedRange.Hint(spec, units)}");
            }

            problem = problem.Length == 0 ? reading.Problem! : problem;
        }

        var wrong = spec.Wanted is { } wanted ? $"{Named(spec)}{QuantityReader.Quote(text)} is not {wanted}"
            : spec.Kinds.Length == 1 ? Named(spec) + problem
            : $"{Named(spec)}{QuantityReader.Quote(text)} must be {string.Join(" or ", spec.Kinds.Select(k => Units.Of(k).Noun))}, such as "
                + $"{spec.DefaultIn(units) ?? spec.ExampleIn(units)}";
        return (FaultCode.NotQuantity, wrong);
    }

    private static bool Within(KeySpec spec, double number) =>
        number >= Bound(spec.Least!) && number <= Bound(spec.Most!);

    private static double Bound(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Named(KeySpec spec) => spec.Name.Length == 0 ? "" : spec.Name + ": ";
}
