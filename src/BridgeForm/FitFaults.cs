using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm;

/// <summary>
/// The value of one key, nearest to the one in the file, with which the bridge can be built while all others are kept: in
/// steps that people can set, each trial a whole new reading and shape, closed in by halves.
/// </summary>
/// <param name="reading">The file.</param>
/// <param name="path">The key.</param>
internal sealed class NearestValue(ProjectReading reading, string path)
{
    private const double TenthOfAPercent = 0.001;

    // The first trial lies a few steps away, each further one twice as far.
    private const int Growth = 2;

    private readonly Dictionary<long, bool> _tried = [];
    private readonly KeySpec _spec = ProjectKeys.At(path);
    private readonly Entry _entry = reading.Values!.Find(path)!;

    private bool IsWhole => _spec.Type == ValueForm.Whole;

    private bool IsShare => _entry.Kind == QuantityKind.Share;

    private UnitSystem Units => reading.Values!.Units;

    private double Step => IsWhole ? 1 : IsShare ? TenthOfAPercent : Rounding.Step(Units);

    /// <summary>
    /// The value as it is to be written, and whether it is less than the one in the file; null when none in range will do.
    /// </summary>
    public (string Text, bool IsLess)? Find()
    {
        if (!IsWhole && _spec.Type != ValueForm.Quantity)
        {
            return null;
        }

        var at = _entry.Number / Step;
        var (least, most) = Range();
        var less = Towards((long)Math.Ceiling(at) - 1, -1, least);
        var more = Towards((long)Math.Floor(at) + 1, 1, most);
        return (less, more) switch
        {
            (null, null) => null,
            ({ } l, null) => (Written(l), true),
            (null, { } m) => (Written(m), false),
            ({ } l, { } m) => at - l <= m - at ? (Written(l), true) : (Written(m), false),
        };
    }

    /// <summary>Steps away from the file's value in leaps until one works, then back by halves.</summary>
    private long? Towards(long first, int way, long end)
    {
        var (fails, leap) = (first - way, 1L);
        for (var at = first; way * (end - at) >= 0; leap *= Growth)
        {
            if (Works(at))
            {
                return Between(fails, at);
            }

            fails = at;
            var next = at + (way * leap);
            at = way * (end - next) < 0 && at != end ? end : next;
        }

        return null;
    }

    private long Between(long fails, long works)
    {
        while (Math.Abs(works - fails) > 1)
        {
            var middle = (works + fails) / 2;
            (fails, works) = Works(middle) ? (fails, middle) : (middle, works);
        }

        return works;
    }

    private bool Works(long steps)
    {
        if (!_tried.TryGetValue(steps, out var works))
        {
            _tried[steps] = works = reading.With(path, Written(steps)) is { } parameters
                && Bridge.TryLayout(parameters, out _, out _, out _);
        }

        return works;
    }

    private (long Least, long Most) Range()
    {
        if (_spec.Least is not { } low || _spec.Most is not { } high)
        {
            // A sag: of the span.
            var most = IsShare ? 1 : reading.Parameters!.Site.Span;
            return (1, (long)(most / Step));
        }

        return ((long)Math.Ceiling(Bound(low) / Step), (long)Math.Floor(Bound(high) / Step));
    }

    private double Bound(string text) => IsWhole
        ? double.Parse(text, CultureInfo.InvariantCulture)
        : QuantityReader.Read(_spec.Kinds[0], text).Value;

    private string Written(long steps) => IsWhole
        ? steps.ToString(CultureInfo.InvariantCulture)
        : IsShare ? QuantityText.Share(steps * Step) : new QuantityText(Units).Size(steps * Step);
}

/// <summary>
/// What does not fit on the shape that was found, as faults of the project file: with key, place and what would be right.
/// </summary>
public static class FitFaults
{
    /// <summary>One fault a misfit, in the order of the file.</summary>
    /// <param name="reading">The file, read without a fault.</param>
    /// <param name="misfits">What <see cref="Bridge.TryBuild"/> found.</param>
    public static ImmutableArray<ProjectFault> Tell(ProjectReading reading, ImmutableArray<Misfit> misfits) =>
        [.. misfits.Select(m => Tell(reading, m)).OrderBy(f => f.Line).ThenBy(f => f.Column)];

    private static ProjectFault Tell(ProjectReading reading, Misfit misfit)
    {
        var values = reading.Values!;
        var at = values.Given(misfit.Key) ? misfit.Key : misfit.Others.FirstOrDefault(o => values.Given(o)) ?? misfit.Key;
        var place = values.Place(at);
        return new ProjectFault(
            place.Line, place.Column, misfit.Code,
            $"{misfit.Key}: with '{values.Find(misfit.Key)?.Text}'{(values.Given(misfit.Key) ? "" : " (its default)")} {misfit.What}; "
                + $"{Advice(reading, misfit)}");
    }

    private static string Advice(ProjectReading reading, Misfit misfit)
    {
        var others = string.Join(" or ", misfit.Others);
        return new NearestValue(reading, misfit.Key).Find() is var (text, isLess)
            ? $"all else kept, write {(isLess ? "at most" : "at least")} {text}, or change {others}"
            : $"all else kept, no value of {misfit.Key} in its range works; change {others}";
    }
}
