using System.Collections.Immutable;
using BridgeForm.Checks.Codes;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Stocking;

/// <summary>One step from the first landing to the open bridge.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Stage">Stage of the assembly it belongs to; 0 before frames are hung, null after the last.</param>
/// <param name="Where">Frame, bay, <c>ropes</c>, <c>site</c> or <c>bridge</c>.</param>
/// <param name="IsHold">Nothing goes on until what it says is so.</param>
/// <param name="Text">What is done, or what must be so.</param>
/// <param name="Mass">Of what is lifted at once, kilograms: a whole frame, else the heaviest part; 0 where nothing is.</param>
public sealed record ErectionStep(int Number, int? Stage, string Where, bool IsHold, string Text, double Mass);

/// <summary>
/// The whole way of building: landings and anchors, ropes, frames and bays in the order of <see cref="AssemblyOrder"/>, the last look; with
/// hold points in between. Common practice of rigging, no source, where no other stands in the text.
/// </summary>
public static class ErectionPlan
{
    /// <summary>Before the first frame, metres: how far the ropes may differ at mid-span (1/4 in, an own figure).</summary>
    public const double RopesAlike = Quantities.Units.MetresPerInch / 4;

    /// <summary>All steps in order.</summary>
    public static ImmutableArray<ErectionStep> List(
        BridgeParameters parameters, ImmutableArray<Piece> pieces, RopeWork ropework, ImmutableArray<AssemblyStep> assembly,
        ImmutableArray<StageSlope> stages, double endsNearer)
    {
        var found = stages.ToDictionary(s => s.Stage);
        var lastDeck = assembly.LastOrDefault(s => s.Work == AssemblyWork.LayDeck);
        // As it is lifted, not as it will weigh in service.
        var masses = pieces
            .SelectMany(p => p.Occurrences.Select(o => (o.Id, Mass: p.Volume * parameters.StockNamed(p.Stock).Density.High)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        var ends = EndBays(assembly);
        List<(int? Stage, string Where, bool IsHold, string Text, double Mass)> steps =
        [
            .. Before(parameters, ropework),
            .. assembly.GroupBy(s => s.Stage)
                .SelectMany(stage => Stage(parameters, ropework, stage, masses, Leans(parameters, found, stage.Key))
                .Select(s => Loose(parameters, s, ends, endsNearer))
                .Concat(Decked(parameters, stage.Key, lastDeck, stages, endsNearer > 0))),
            .. After(parameters, endsNearer, stages is [.., var last] ? last : null),
        ];
        return [.. steps.Select((s, i) => new ErectionStep(i + 1, s.Stage, s.Where, s.IsHold, s.Text, s.Mass))];
    }

    /// <summary>The heaviest thing lifted at once; null where nothing is.</summary>
    public static ErectionStep? Heaviest(ImmutableArray<ErectionStep> steps) =>
        Ties.FirstLargest(steps.Where(s => s.Mass > 0), s => s.Mass);

    private static IEnumerable<(int?, string, bool, string, double)> Before(BridgeParameters parameters, RopeWork work)
    {
        var words = new QuantityText(parameters.Units);
        var bare = work.Chosen.Hoisting.Rows.FirstOrDefault(r => string.Equals(r.Stage, Hoisting.Bare, StringComparison.Ordinal)
            && Math.Abs(r.Temperature - parameters.Site.ReferenceTemperature) < 0.01);
        yield return (0, "site", false, "Build both landings to their levels; set anchors and supports as the engineer drew them", 0);
        yield return (
            0, "site", true, "anchors, and posts or trees that hold the ropes, are signed off by a licensed engineer: name and date", 0);
        yield return (0, "site", true, "the exclusion zone is roped off as drawn, and someone keeps people out of it", 0);
        yield return (
            0, "site", true,
            "fall protection is planned and its anchors are rated by a competent person, for no guard stands before the deck lies from end "
                + "to end; neither the bridge's ropes nor its guards are such anchors",
            0);
        yield return (
            0, "site", true,
            "no wind that moves what hangs is forecast for the day's stages (how little turns it over: the drawings' cover, wind); nothing "
                + "is left half hung overnight but as the engineer says, side stays as the engineer drew them",
            0);
        if (ErectionEnds.Slots(parameters, work, words) is { } slots)
        {
            yield return (0, "site", true, slots, 0);
        }

        yield return (
            0, "ropes", false,
            (RopeTape.Of(parameters, work) is null
                ? "Lay each rope out straight and mark every frame from support A's point (rope-marks.csv); where the eyes come is not "
                    + "known: write ropes.ends.shackle and ropes.ends.turnbuckle into the file as you measure them"
                : "Lay each rope out straight, make its eye at A, hook the tape into it and mark every frame and the eye at B "
                    + (work.Cut?.Length is null ? "(rope-marks.csv); where the rope is cut is in no table: after the end is made"
                        : "and the cut end (rope-marks.csv); seize the rope on both sides of it before it is cut"))
                + $". {work.Chosen.Sentence}",
            0);
        yield return (0, "ropes", false, ErectionEnds.Make(parameters, words), 0);
        yield return (0, "ropes", true, $"both ropes lie side by side and all marks agree within {words.Size(Rounding.Sixteenth)}", 0);
        var mass = ErectionEnds.RopeMass(parameters, work);
        yield return (
            0, "ropes", false,
            ErectionEnds.Hoist(parameters.Site) + (RopeChain.Of(parameters, work) is { } chain
                ? $"; turnbuckles {words.Size(chain.Opening)} open, pins of the shackles secured"
                : "; pins of the shackles secured")
                + (mass > 0 ? "; weight of one rope, without its fittings" : "; weigh the rope, whose length is not known here"),
            mass);
        yield return (
            0, "ropes", false,
            "Sight both ropes at the sag of their temperature (hoisting.csv)" + (bare is null
                ? ""
                : $": bare, at {words.Temperature(bare.Temperature)}, {words.Size(bare.Sag)} at mid-span, sight {words.Size(bare.Sight)} "
                    + "below"),
            0);
        yield return (
            0, "ropes", true,
            $"both ropes hang at their sag, alike within {words.Size(RopesAlike)}; if not, write what hangs under as_built and run correct",
            0);
    }

    private static IEnumerable<(int?, string, bool, string, double)> Stage(
        BridgeParameters parameters, RopeWork work, IEnumerable<AssemblyStep> stage, IReadOnlyDictionary<string, double> masses,
        string? leans)
    {
        var steps = stage.ToList();
        foreach (var step in steps)
        {
            var built = steps.Where(s => string.Equals(s.Where, step.Where, StringComparison.Ordinal) && s.Work == AssemblyWork.BuildFrame)
                .SelectMany(s => s.Parts).Sum(p => masses[p]);
            var isSet = step.Work is AssemblyWork.HangFrame or AssemblyWork.SetEndFrame;
            yield return (
                step.Stage, step.Where, false, AssemblyWords.Of(step),
                isSet ? built + parameters.Frames.HardwareMass : step.Parts.Select(p => masses[p]).DefaultIfEmpty(0).Max());
            var hung = steps.Where(s => s.Work == AssemblyWork.HangFrame).ToList();
            if (hung.Count > 0 && step == hung[^1])
            {
                yield return (
                    step.Stage, string.Join(' ', hung.Select(s => s.Where)), true,
                    "the keepers are closed on both ropes; nobody steps on a frame before", 0);
                foreach (var frame in hung)
                {
                    if (ErectionEnds.Clips(parameters, work, frame.Where) is { } clips)
                    {
                        yield return (step.Stage, frame.Where, true, clips, 0);
                    }
                }

                if (leans is not null)
                {
                    yield return (step.Stage, "bridge", true, leans, 0);
                }
            }
        }
    }

    private static (string First, string Last) EndBays(ImmutableArray<AssemblyStep> assembly)
    {
        var bays = assembly.Where(s => s.Work == AssemblyWork.LayDeck).Select(s => s.Where).Order(StringComparer.Ordinal).ToList();
        return bays.Count == 0 ? ("", "") : (bays[0], bays[^1]);
    }

    // The frames next to the supports come nearer to them as stretch is drawn in (end-bay-room).
    private static (int? Stage, string Where, bool IsHold, string Text, double Mass) Loose(
        BridgeParameters parameters, (int? Stage, string Where, bool IsHold, string Text, double Mass) step,
        (string First, string Last) ends, double nearer) =>
        nearer <= 0 || step.IsHold || !new[] { ends.First, ends.Last }.Contains(step.Where, StringComparer.Ordinal) ? step : step with
        {
            Text = step.Text + "; at the end frame leave all of this bay loose, with room to slide "
                + $"{new QuantityText(parameters.Units).Size(nearer)}: it comes nearer by as much as the ropes are drawn in",
        };

    // On a long bridge some stages are not solved: they are held where a neighbour that was needs it.
    private static string? Leans(BridgeParameters parameters, Dictionary<int, StageSlope> found, int stage)
    {
        if (found.TryGetValue(stage, out var own))
        {
            return own.Crew is not { } crew ? null
                : crew.Tilt is null ? AssemblyWords.SideStays(crew)
                : Elementary.Atan(crew.Tilt.Value) > Limits.CrossSlope(parameters.Use, parameters.Limits).Most
                    ? AssemblyWords.OneByOne(crew)
                    : null;
        }

        var crewed = found.Values.Where(s => s.Crew is not null).OrderBy(s => s.Stage).ToList();
        StageSlope?[] beside = [crewed.LastOrDefault(s => s.Stage < stage), crewed.Find(s => s.Stage > stage)];
        return Array.Find(beside, s => s?.Crew is { Tilt: null }) is { } turned ? AssemblyWords.SideStaysLike(turned.Stage) : null;
    }

    // Only then do the ropes hang nearly as drawn; before, the last frames lean together.
    private static IEnumerable<(int?, string, bool, string, double)> Decked(
        BridgeParameters parameters, int stage, AssemblyStep? lastDeck, ImmutableArray<StageSlope> stages, bool isLoose)
    {
        if (lastDeck?.Stage == stage)
        {
            var nearer = new QuantityText(parameters.Units).Size(stages.Select(s => s.BoardsNearer).DefaultIfEmpty(0).Max());
            yield return (
                stage, "bridge", true,
                "the deck lies from end to end and every board is fixed at both ends"
                    + (isLoose ? " (those of the first and the last bay at the inner one alone)" : "")
                    + "; until now at one end only, loose at the other, for "
                    + $"half built the ropes bend more at the last frames and boards that meet there come nearer by up to {nearer}. No "
                    + "guard before that",
                0);
        }
    }

    private static IEnumerable<(int?, string, bool, string, double)> After(
        BridgeParameters parameters, double endsNearer, StageSlope? last)
    {
        var words = new QuantityText(parameters.Units);
        var reference = words.Temperature(parameters.Site.ReferenceTemperature);
        var expected = last is null ? "" : $"as newly set {words.Size(last.Sag)} at {reference}, "
            + "wood as dry as in service; ";
        yield return (
            null, "ropes", false, ErectionEnds.Again(parameters), 0);
        yield return (
            null, "ropes", false, "Measure the sag of both ropes and the temperature; keep them, and write them under as_built", 0);
        yield return (
            null, "ropes", true,
            "sag and tilt are what correct calls now, at the temperature of that day, within what it leaves ("
                + $"{expected}by temperature: upkeep.pdf)",
            0);
        if (endsNearer > 0)
        {
            yield return (
                null, "bridge", false,
                "Cut boards, rails and caps of the first and the last bay to what is measured there now, and fix them at the end frames; "
                    + "as the ropes go on stretching and are drawn in, free and fit them again",
                0);
        }

        yield return (null, "bridge", true, "rails and caps are closed on both sides from end to end; only the crew before that", 0);
        yield return (null, "bridge", true, "a licensed engineer has looked at the finished bridge and its papers: name and date", 0);
    }
}
