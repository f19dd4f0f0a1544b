using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Loads;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Cli.Text;

/// <summary>
/// What <c>correct</c> prints, in at most 100 columns: what was measured, the turns, what remains of sag and tilt, the marks or levels
/// that follow, and checks that come out otherwise.
/// </summary>
internal static class CorrectText
{
    /// <summary>Prints it.</summary>
    public static void Write(TextWriter output, Correction found)
    {
        output.WriteLine(found.Parameters.Name);
        output.WriteLine();
        Measured(output, found);
        Turns(output, found);
        Remains(output, found);
        if (found.Levels.IsEmpty)
        {
            Marks(output, found);
        }
        else
        {
            Levels(output, found);
        }

        Checks(output, found);
        Columns.Wrapped(output, RopeCaution, "");
        Columns.Wrapped(output, Caution.Text, "");
    }

    // Common practice of rigging, no source.
    private const string RopeCaution = "Turn a little at each end in turn, and look at the sag in between; nobody on the bridge or under "
        + "it, nobody in line with a rope. Leave as much thread in each end of a turnbuckle as it is thick, and secure it against turning.";

    private static QuantityText Words(Correction found) => new(found.Parameters.Units);

    private static void Measured(TextWriter output, Correction found)
    {
        var (words, built, site) = (Words(found), found.Measured, found.Parameters.Site);
        output.WriteLine($"MEASURED, {Stage(built.Stage)}, ropes at {words.Temperature(built.Temperature)}");
        Columns.Row(output, "span", $"{words.Length(built.Span)}, drawn {words.Length(site.Span)}");
        Columns.Row(output, "rise", $"{ShapeText.Rise(words, built.Rise)}, drawn {ShapeText.Rise(words, site.Rise)}");
        Columns.Row(output, "sag", $"left {words.Size(built.LeftSag)}, right {words.Size(built.RightSag)}");
        if (built.Stretch > 0)
        {
            Columns.Row(output, "stretch seen", QuantityText.Share(built.Stretch));
        }

        Columns.Row(output, "rope too long", $"left {Fine(found, found.TooLong.Left)}, right {Fine(found, found.TooLong.Right)} between "
            + "the supports (- is too short)");
        output.WriteLine();
    }

    private static void Turns(TextWriter output, Correction found)
    {
        var thread = found.Turnbuckle.Thread!;
        if (found.IsOtherRise)
        {
            Columns.Wrapped(
                output, "ANOTHER RISE than drawn: every bevel and channel is cut for the drawn one. Measure again; if it is so, write it "
                    + "under site and make the files anew.", "", "  ");
        }

        if (found.IsOtherThanMarked)
        {
            Columns.Wrapped(
                output, "OTHER THAN MARKED: as measured, the ropes are longer between the supports than their marks by "
                    + $"{Fine(found, found.OverMarks.Left)} (left) and {Fine(found, found.OverMarks.Right)} (right; - is shorter), but "
                    + $"the two turnbuckles of a rope let out {Words(found).Size(2 * found.Reach!.Value.Out)} and take in "
                    + $"{Words(found).Size(2 * found.Reach.Value.In)} at the most. Span or sag was measured wrong, or an eye is not where "
                    + "it was marked: measure again before anything is turned or marked.", "", "  ");
        }

        if (found.IsBeyondReach)
        {
            Columns.Wrapped(
                output, "BEYOND REACH: do not turn by the table below before the ends of the rope are moved as told under it, and look "
                    + "whether it was measured right.", "", "  ");
        }

        output.WriteLine("TURNS of each turnbuckle's body");
        Columns.Table(
            output,
            [
                ["rope", "at A", "at B", "unrounded, each", "comes to, both"],
                Row("left", found.Left),
                Row("right", found.Right),
            ]);
        var size = found.Turnbuckle.Size is { } s && found.Parameters.Ropes.Turnbuckle.Pitch is null
            ? $"Turnbuckle {s.Named(found.Parameters.Units)}. " : "";
        Columns.Wrapped(
            output, $"{size}One turn moves both its ends, {Fine(found, thread.PerTurn)}; a flat is 1/6 turn. Thread: {thread.Source}. "
                + "Measure yours: ropes.ends.turnbuckle.pitch goes before the table.", "");
        if (found.IsBeyondReach)
        {
            Columns.Wrapped(
                output, $"A turnbuckle takes in {Words(found).Size(found.Reach!.Value.In)} and lets out "
                    + $"{Words(found).Size(found.Reach.Value.Out)} from where it was to be hung. Move the ends of the rope in their clips "
                    + "by about the difference, with the rope slack, then measure again.", "", "  ");
        }

        if (found.StillToCome is { } still)
        {
            Columns.Wrapped(
                output, $"{(found.IsShortLater ? "TOO LITTLE IS LEFT: after" : "After")} these turns each turnbuckle must still take in "
                    + $"{Words(found).Size(still.In)} and let out {Words(found).Size(still.Out)} (stretch to come, hottest and coldest "
                    + $"day): measure what thread is open before you turn{(found.IsShortLater
                        ? ", and move the ends of the rope in their clips by what is missing, with the rope slack" : "")}.", "", "  ");
        }

        if (found.Parameters.Site is var site && new[] { site.A.Backstay, site.B.Backstay }.Any(b => b is { Sliding: false }))
        {
            Columns.Wrapped(
                output, "FIXED SADDLE: free the rope on it before you turn, and fix it again after: else a turn tightens the backstay and "
                    + "leaves the bridge as it is.", "", "  ");
        }

        if (found.Chain is null)
        {
            Columns.Wrapped(
                output, "How far open the turnbuckles were to be hung is not known: look whether yours go so far, and leave what is still "
                    + "to come of stretch and heat.", "", "  ");
        }

        output.WriteLine();

        string[] Row(string rope, RopeTurns turns) =>
        [
            rope, InFlats(turns.A), InFlats(turns.B), NumberText.Fixed(Math.Abs(turns.Exact), 3), Fine(found, turns.Change(thread)),
        ];
    }

    /// <summary>Turns in sixths: <c>let out 3-1/6</c>, <c>take in 1/2</c>, <c>none</c>.</summary>
    internal static string InFlats(int flats)
    {
        if (flats == 0)
        {
            return "none";
        }

        var (whole, rest) = Math.DivRem(Math.Abs(flats), TurnbuckleThread.FlatsPerTurn);
        string[] parts = ["", "1/6", "1/3", "1/2", "2/3", "5/6"];
        var number = whole.ToString(CultureInfo.InvariantCulture);
        return (flats > 0 ? "let out " : "take in ")
            + (rest == 0 ? number : whole == 0 ? parts[rest] : $"{number}-{parts[rest]}");
    }

    private static void Remains(TextWriter output, Correction found)
    {
        var (words, built, wanted) = (Words(found), found.Measured, found.Parameters.Ropes.Sag);
        output.WriteLine("AFTER THESE TURNS");
        List<string[]> rows =
        [
            ["sag", "left", "right", "wanted", "left off", "right off", "tilt"],
            Row($"now, {words.Temperature(built.Temperature)}", found.SagsNow, found.WantedNow, ""),
            Row("finished, empty", found.Finished.Sags, wanted, QuantityText.Degrees(found.Finished.Tilt)),
        ];
        if (found.AsItIs is { } asItIs)
        {
            rows.Add(Row("if nothing is turned", asItIs.Sags, wanted, QuantityText.Degrees(asItIs.Tilt)));
        }

        Columns.Table(output, rows);
        if (found.ToCome > 0)
        {
            Columns.Wrapped(
                output, $"Finished: once {QuantityText.Share(found.ToCome)} of stretch have come that the ropes were marked short for "
                    + "(ropes.new: as-is).", "");
            output.WriteLine();
        }

        string[] Row(string what, RopePair sags, double target, string tilt) =>
        [
            what, words.Size(sags.Left), words.Size(sags.Right), words.Size(target), Fine(found, sags.Left - target),
            Fine(found, sags.Right - target), tilt,
        ];
    }

    private static void Marks(TextWriter output, Correction found)
    {
        var (words, drawn) = (Words(found), found.Anew.Frames);
        output.WriteLine("MARKS that follow, from support A's point, rope laid out straight, as it is now");
        Columns.Table(
            output,
            [
                ["frame", "unstressed", "level of the rope"],
                .. found.Marks.Select((m, i) => (string[])[m.Frame, words.Length(m.Unstressed), words.Length(drawn[i].Node.Y)]),
            ]);
        Columns.Wrapped(
            output, "Measure from the mark of F00 where it is to lie after the turns, not from the eye: the turns move the eye. Rise and "
                + "slopes other than drawn make every bevel other than cut: CHECKS below are of parts cut anew.", "");
        if (found.IsOtherStep)
        {
            Columns.Wrapped(
                output, $"PARTS: from frame to frame it is {Fine(found, found.StepChange)} more than drawn (- is less), in every bay: "
                    + "boards, rails and caps that are cut already are off by as much. Write the measured span under site, and make the "
                    + "files anew before anything is cut.", "", "  ");
        }

        output.WriteLine();
    }

    private static void Levels(TextWriter output, Correction found)
    {
        var words = Words(found);
        output.WriteLine("LEVELS that follow, bridge finished and empty");
        Columns.Table(
            output,
            [
                ["frame", "rope axis, mean of both", "deck above the drawing by", "right side higher by"],
                .. found.Levels.Select(l => (string[])
                [
                    l.Frame, words.Length(l.Level), Fine(found, l.OverDrawn), Fine(found, l.RightOverLeft),
                ]),
            ]);
        Columns.Wrapped(
            output, $"First and last bay are longer than drawn by {Fine(found, found.EndBays.Left)} on the left rope and "
                + $"{Fine(found, found.EndBays.Right)} on the right one (- is shorter), stretch of the bay itself not counted: "
                + (found.Measured.Stage == BuildStage.Complete
                    ? "free boards, rails and caps of these bays before anything is turned, and cut them anew where they do not fit. "
                    : "cut the boards, rails and caps of these bays to what you measure. ")
                + "The checks below take all bays as equal and both ropes as the mean of both.", "");
        if (found.EndBearing is { } end)
        {
            Columns.Wrapped(
                output, $"As it hangs now, boards or stringers of these bays bear on {Fine(found, Math.Max(0, end.Bears))} where they "
                    + $"meet those of the next bay; below {Fine(found, end.Least)} nobody goes on them.", "");
        }

        output.WriteLine();
    }

    private static void Checks(TextWriter output, Correction found)
    {
        output.WriteLine("CHECKS that come out otherwise than by the file");
        Changed(output, "after these turns", [.. found.Changes], found.NoneAfter);
        Changed(output, "if nothing is turned", [.. found.ChangesAsItIs], found.NoneAsItIs);
        Columns.Wrapped(
            output, "These checks take both ropes as alike, with the mean of both sags: what ropes of unlike length do to tilt and roll "
                + $"was not looked at{Tilts(found)}.", "  ", "    ");
        if (found.IsOffLimits)
        {
            Columns.Wrapped(
                output, "KEEP OFF as it hangs now: nobody on it until it was turned and measured again"
                    + (found.IsOffBearing ? ", and boards of the first and last bay bear as they must." : "."), "  ", "    ");
        }

        output.WriteLine();
    }

    private static void Changed(TextWriter output, string when, IReadOnlyList<CheckChange> changes, string? failure)
    {
        if (failure is not null || changes.Count == 0)
        {
            Columns.Wrapped(output, $"{when}: {failure ?? "none"}", "  ", "    ");
            return;
        }

        output.WriteLine($"  {when}:");
        foreach (var change in changes)
        {
            var check = (change.Now ?? change.Before)!;
            Columns.Wrapped(output, $"{check.Title} ({check.Id}): {Changed(change)}"
                + (change.Now is { } now ? $"; {now.Detail}" : ""), "    ", "      ");
        }
    }

    private static string Changed(CheckChange change) => change.IsOnlyWorse
        ? $"{Word(change.Now)} as before, but asks for more"
        : $"{Word(change.Before)}, now {Word(change.Now)}";

    private static string Tilts(Correction found) => found.AsItIs is { } now
        ? $"; nothing turned, the finished, empty bridge tilts by {QuantityText.Degrees(now.Tilt)}, and may tilt by "
            + $"{QuantityText.Degrees(found.MostTilt)} under all loads together"
        : "";

    private static string Word(CheckResult? check) => check is null ? "not made" : check.Status.Word();

    private static string Stage(BuildStage stage) => stage switch
    {
        BuildStage.Frames => "frames hung, no deck",
        BuildStage.Complete => "bridge complete and empty",
        _ => "ropes bare",
    };

    // Finer than a tape: hundredths of an inch, tenths of a millimetre.
    private static string Fine(Correction found, double metres) => found.Parameters.Units == UnitSystem.Imperial
        ? NumberText.Fixed(metres / Units.MetresPerInch, 2) + " in"
        : NumberText.Fixed(metres * 1000, 1) + " mm";
}
