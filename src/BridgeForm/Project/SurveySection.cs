using System.Collections.Immutable;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>One reading of a levelling line, metres.</summary>
/// <param name="Distance">Level distance from the rope's point at support A.</param>
/// <param name="Rod">On the rod: how far the point lies below the line of sight.</param>
public readonly record struct SurveyReading(double Distance, double Rod);

/// <summary>What was read with tape and level. Metres.</summary>
public sealed record SurveyParameters
{
    /// <summary>From the rope's point at support A over the ground to that at B, two at least.</summary>
    public required ImmutableArray<SurveyReading> Out { get; init; }

    /// <summary>Rod at B and then at A, with the level set up anew; null when it was not.</summary>
    public (double AtB, double AtA)? Back { get; init; }

    /// <summary>Tape drawn tight from one point to the other along the slope; null when it was not.</summary>
    public double? Tape { get; init; }

    /// <summary>Level distance from support to support.</summary>
    public double Span => Out[^1].Distance - Out[0].Distance;

    /// <summary>Support B above A by the way out: the rod reads less where the point is higher.</summary>
    public double RiseOut => Out[0].Rod - Out[^1].Rod;

    /// <summary>The same by the way back.</summary>
    public double? RiseBack => Back is { } back ? back.AtA - back.AtB : null;

    /// <summary>The mean of both ways, or the way out alone.</summary>
    public double Rise => RiseBack is { } back ? (RiseOut + back) / 2 : RiseOut;

    /// <summary>By how much both ways differ.</summary>
    public double? Misclosure => RiseBack is { } back ? Math.Abs(RiseOut - back) : null;

    /// <summary>Level distance by the tape along the slope; null without one, and for one shorter than the rise.</summary>
    public double? SpanByTape => Tape is { } tape && tape > Math.Abs(Rise) ? Math.Sqrt((tape * tape) - (Rise * Rise)) : null;

    /// <summary>The ground between the supports, from the rope's point at A.</summary>
    public ImmutableArray<GroundPoint> Ground =>
        [.. Out[1..^1].Select(r => new GroundPoint(r.Distance - Out[0].Distance, Out[0].Rod - r.Rod))];
}

/// <summary>Keys under <c>site.survey</c>, how they are read, what they stand in for, what they must agree on.</summary>
internal static class SurveySection
{
    private const string Path = "site.survey";
    private const string Span = "site.span";
    private const string Rise = "site.rise";

    // Lengths that a file writes are as good as a tape's line; metres.
    private const double SameLength = Rounding.Sixteenth;

    // What tape and level of a small site may differ by before one of them was read wrong: 1/2 in and 1/500 of the span; both ways
    // of a level 1/2 in (own figures).
    private const double OffTape = Quantities.Units.MetresPerInch / 2;
    private const double OffTapeShare = 1.0 / 500;
    private const double OffLevel = Quantities.Units.MetresPerInch / 2;

    public static KeySpec Keys => Define.OptionalMap(
        "survey",
        "Readings of tape and level, which become span, rise and ground",
        [
            Define.List(
                "out",
                "Readings [level distance from A, rod] from the rope's point at A over the ground to that at B",
                Define.List("", "A reading [distance, rod]", Define.Length("", "Distance or rod", "0 ft", "20000 ft"), 2, 2),
                2,
                1000).Needed("[[0 ft, 4.52 ft], [12 ft, 9.3 ft], [30 ft, 4.02 ft]]", "[[0 m, 1.38 m], [4 m, 2.84 m], [9 m, 1.22 m]]"),
            Define.List(
                "back", "Rod [at B, at A], with the level set up anew", Define.Length("", "Rod", "0 ft", "20000 ft"), 2, 2),
            Define.Length("tape", "Tape drawn tight from the rope's point at A to that at B, along the slope", "3 ft", "20000 ft"),
        ]);

    public static SurveyParameters? Read(FileValues v)
    {
        var readings = v.Items(Path + ".out").ToList();
        return !v.Given(Path) || !v.Good(Path + ".out") || readings.Count < 2 ? null : new SurveyParameters
        {
            Out = [.. readings.Select(p => new SurveyReading(v.Number(p + ".0"), v.Number(p + ".1")))],
            Back = v.Given(Path + ".back") && v.Good(Path + ".back")
                ? (v.Number(Path + ".back.0"), v.Number(Path + ".back.1"))
                : null,
            Tape = v.NumberOrNull(Path + ".tape"),
        };
    }

    /// <summary>Fills in span and rise where the file gives a survey and leaves them out. Returns what was filled in.</summary>
    public static ImmutableArray<ChosenDefault> FillIn(FileValues v, SpecWalker walker, FaultList faults)
    {
        if (!v.Given(Path))
        {
            return [];
        }

        var survey = Read(v);
        var chosen = ImmutableArray.CreateBuilder<ChosenDefault>();
        Choose(Span, survey?.Span, "the last distance of site.survey less the first" + TapeText(survey, v.Units));
        Choose(Rise, survey?.Rise, RiseText(survey, v.Units));
        return chosen.ToImmutable();

        void Choose(string path, double? value, string rule)
        {
            if (v.Given(path))
            {
                return;
            }

            var spec = ProjectKeys.At(path);
            var text = value is { } metres ? Written(metres, v.Units) : "";
            var read = ValueReader.Read(spec, text, v.Units);
            if (read.Entry is null)
            {
                // Readings that make no span or rise that a bridge may have; what could not be read at all is told already.
                if (value is not null)
                {
                    faults.Add(read.Code, v.Place(Path), $"survey: {read.Problem}");
                }

                walker.Choose(spec, path, spec.DefaultIn(v.Units) ?? spec.ExampleIn(v.Units)!, good: false);
                return;
            }

            walker.Choose(spec, path, text, good: true);
            chosen.Add(new ChosenDefault(path, text, rule));
        }
    }

    /// <summary>Readings go from A to B; both ways, the tape and what the file says besides agree.</summary>
    public static void Check(CheckedFile f)
    {
        if (Read(f.Values) is not { } survey || !InOrder(f))
        {
            return;
        }

        if (survey.Misclosure > OffLevel)
        {
            f.Stop(FaultCode.SurveyContradicts, Path + ".back", $"back: B lies {f.Length(survey.RiseOut)} above A by the way out and "
                + $"{f.Length(survey.RiseBack!.Value)} by the way back, {f.Length(survey.Misclosure!.Value)} apart; more than "
                + $"{f.Length(OffLevel)} is a wrong reading. Level again");
        }

        if (survey.Tape is { } tape && !(Math.Abs((survey.SpanByTape ?? 0) - survey.Span) <= OffTape + (OffTapeShare * survey.Span)))
        {
            f.Stop(FaultCode.SurveyContradicts, Path + ".tape", $"tape: {f.Length(tape)} along the slope and a rise of "
                + $"{f.Length(survey.Rise)} make a span of {f.Length(survey.SpanByTape ?? 0)}, but the distances of out make "
                + $"{f.Length(survey.Span)}. Measure again");
        }

        Agrees(f, Span, survey.Span);
        Agrees(f, Rise, survey.Rise);
        if (f.Values.Given("site.ground") && survey.Ground.Length > 0)
        {
            f.Stop(FaultCode.SurveyContradicts, "site.ground", "ground: site.survey has readings of the ground too; leave one of them out");
        }
    }

    private static bool InOrder(CheckedFile f)
    {
        var last = double.NegativeInfinity;
        foreach (var reading in f.Values.Items(Path + ".out"))
        {
            var at = reading + ".0";
            if (f.Values.Number(at) <= last)
            {
                f.Stop(FaultCode.SurveyOutOfOrder, at, $"out: '{f.Written(at)}' does not lie beyond the reading before it; list readings "
                    + "from A towards B");
                return false;
            }

            last = f.Values.Number(at);
        }

        return true;
    }

    private static void Agrees(CheckedFile f, string path, double surveyed)
    {
        if (f.Values.Given(path) && f.Good(path) && Math.Abs(f.Values.Number(path) - surveyed) > SameLength)
        {
            f.Stop(FaultCode.SurveyContradicts, path, $"{path[5..]}: '{f.Written(path)}', but site.survey makes it {f.Length(surveyed)}; "
                + "leave this key out, or mend the readings");
        }
    }

    private static string TapeText(SurveyParameters? survey, UnitSystem units) => survey?.SpanByTape is { } tape
        ? $"; {new QuantityText(units).Length(tape)} by the tape along the slope"
        : "";

    private static string RiseText(SurveyParameters? survey, UnitSystem units)
    {
        var words = new QuantityText(units);
        return survey?.RiseBack is { } back
            ? $"the rod at A less the rod at B: {words.Length(survey.RiseOut)} out, {words.Length(back)} back, misclosure "
                + $"{words.Length(survey.Misclosure!.Value)}, their mean"
            : "the rod at A less the rod at B; leveled one way only, so that a wrong reading shows nowhere";
    }

    // To 0.1 mm, in the unit of the project.
    private static string Written(double metres, UnitSystem units) => units == UnitSystem.Metric
        ? NumberText.Rounded(metres, 4) + " m"
        : NumberText.Rounded(metres / Quantities.Units.MetresPerFoot, 4) + " ft";
}
