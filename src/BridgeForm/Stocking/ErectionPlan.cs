using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Ropes.Fittings;

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
        ImmutableArray<StageSlope> stages)
    {
        var found = stages.ToDictionary(s => s.Stage);
        var lastDeck = assembly.LastOrDefault(s => s.Work == AssemblyWork.LayDeck);
        var masses = pieces.SelectMany(p => p.Occurrences.Select(o => (o.Id, p.Mass)))
            .ToDictionary(p => p.Id, p => p.Mass, StringComparer.Ordinal);
        List<(int? Stage, string Where, bool IsHold, string Text, double Mass)> steps =
        [
            .. Before(parameters, ropework),
            .. assembly.GroupBy(s => s.Stage).SelectMany(stage => Stage(parameters, stage, masses, found.GetValueOrDefault(stage.Key)?.Crew)
                .Concat(Decked(parameters, stage.Key, lastDeck, stages))),
            .. After(parameters),
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
        yield return (
            0, "ropes", false,
            (RopeTape.Of(parameters, work) is null
                ? "Lay each rope out straight and mark every frame from support A's point (rope-marks.csv); where the eyes come is not "
                    + "known: write ropes.ends.shackle and ropes.ends.turnbuckle into the file as you measure them"
                : "Lay each rope out straight, make its eye at A, hook the tape into it and mark every frame, the eye at B and the cut end "
                    + "(rope-marks.csv)")
                + $". {work.Chosen.Sentence}",
            0);
        yield return (0, "ropes", false, Ends(parameters, words), 0);
        yield return (0, "ropes", true, $"both ropes lie side by side and all marks agree within {words.Size(Rounding.Sixteenth)}", 0);
        yield return (
            0, "ropes", false,
            "Hoist both ropes over their saddles with a pull line" + (RopeChain.Of(parameters, work) is { } chain
                ? $"; turnbuckles {words.Size(chain.Opening)} open, pins of the shackles secured"
                : "; pins of the shackles secured"),
            0);
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
        BridgeParameters parameters, IEnumerable<AssemblyStep> stage, IReadOnlyDictionary<string, double> masses, CrewOnStage? crew)
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
                if (crew is { Tilt: null })
                {
                    yield return (step.Stage, "bridge", true, AssemblyWords.SideStays(crew), 0);
                }
            }
        }
    }

    // Only then do the ropes hang nearly as drawn; before, the last frames lean together.
    private static IEnumerable<(int?, string, bool, string, double)> Decked(
        BridgeParameters parameters, int stage, AssemblyStep? lastDeck, ImmutableArray<StageSlope> stages)
    {
        if (lastDeck?.Stage == stage)
        {
            var nearer = new QuantityText(parameters.Units).Size(stages.Select(s => s.BoardsNearer).DefaultIfEmpty(0).Max());
            yield return (
                stage, "bridge", true,
                "the deck lies from end to end and every board is fixed at both ends; until now at one end only, loose at the other, for "
                    + $"half built the ropes bend more at the last frames and boards that meet there come nearer by up to {nearer}. No "
                    + "guard before that",
                0);
        }
    }

    private static IEnumerable<(int?, string, bool, string, double)> After(BridgeParameters parameters)
    {
        var clip = Terminations.ClipsFor(parameters.Ropes);
        var words = new Checks.CheckWords(parameters.Units);
        yield return (
            null, "ropes", false,
            clip is null
                ? "Look at every rope's end again under the whole weight"
                : $"Tighten every clip a second time, to {words.Torque(clip.Torque)}, under the whole weight",
            0);
        yield return (
            null, "ropes", false, "Measure the sag of both ropes and the temperature; keep them, and write them under as_built", 0);
        yield return (
            null, "ropes", true, "sag and tilt are what correct calls now, at the temperature of that day, within what it leaves", 0);
        yield return (null, "bridge", true, "rails and caps are closed on both sides from end to end; only the crew before that", 0);
        yield return (null, "bridge", true, "a licensed engineer has looked at the finished bridge and its papers: name and date", 0);
    }

    private static string Ends(BridgeParameters parameters, QuantityText words) => Terminations.ClipsFor(parameters.Ropes) is { } clip
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"Make the eyes: {clip.Count} clips at each end, {words.Size(clip.Spacing)} apart, {words.Size(clip.TurnBack)} turned back, "
                + $"saddles on the live rope, {new Checks.CheckWords(parameters.Units).Torque(clip.Torque)}")
        : "Make the ropes' ends to their maker's instructions";
}
