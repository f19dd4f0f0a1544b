using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Output.DrawingSet;

/// <summary>Codes, loads, wood, ropes and notes: what the whole set rests on, in one place.</summary>
internal static class CodeSheet
{
    /// <summary>The sheets.</summary>
    public static IEnumerable<DrawnPage> Draw(DrawingContext context)
    {
        var flow = new TableFlow(context.Body);
        foreach (var table in (FlowTable[])
            [
                Notes(context), .. context.TitleInFull ? [Issues(context)] : Array.Empty<FlowTable>(), Basis(context), Loads(context),
                Wood(context), Ropes(context), Sources(context),
            ])
        {
            flow.Add(table);
        }

        return flow.Pages.Select(c => new DrawnPage(DocumentType.General, "Codes, loads and notes", "tables", c.Entities));
    }

    private static FlowTable Notes(DrawingContext context) => new(
        "General notes",
        "",
        [new("No.", Figures: true), new("Note", 0.105)],
        [.. GeneralNotes.Write(context).Select((n, i) => new FlowRow([(i + 1).ToString(CultureInfo.InvariantCulture), n]))]);

    /// <summary>What the title block shortens, or has no row for.</summary>
    private static FlowTable Issues(DrawingContext context)
    {
        var s = context.Model.Parameters.Sheets;
        (string Name, string Value)[] fields =
            [("legal owner", s.Owner), ("site", s.Site), ("created by", s.Created), ("approved by", s.Approved), ("number", s.Number)];
        return new FlowTable(
            "Title block and revisions in full",
            "",
            [new("Field", 0.030), new("Date"), new("Value, change", 0.070)],
            [
                .. fields.Where(f => f.Value.Length > 0).Select(f => new FlowRow([f.Name, "", f.Value])),
                .. s.Revisions.Select(r => new FlowRow(["revision " + r.Index, r.Date, r.Change])),
            ]);
    }

    private static FlowTable Basis(DrawingContext context)
    {
        var p = context.Model.Parameters;
        var words = context.Text.Words;
        var (guard, opening) = p.Use == BridgeUse.Public ? (42, "public") : (36, "private");
        return new FlowTable(
            "Basis",
            "",
            [new("What", 0.040), new("Value", 0.070)],
            [
                new(["use", opening]),
                new(["guard height asked for", words.Size(guard * Quantities.Units.MetresPerInch)]),
                new(["opening in a guard", $"under a sphere of {words.Size(4 * Quantities.Units.MetresPerInch)}"]),
                new(["shape drawn", $"bridge complete and empty at {words.Temperature(p.Site.ReferenceTemperature)}"]),
                new(["temperatures looked at", string.Join(", ", p.Site.Temperatures.Select(words.Temperature))]),
                new(["frames stand", p.Frames.Stance == Stance.Square ? "square to the ropes; end frames upright" : "upright"]),
                new(["permission, code in force", "by the local building department"]),
            ]);
    }

    private static FlowTable Loads(DrawingContext context)
    {
        var (l, words) = (context.Model.Parameters.Loads, context.Text.Words);
        FlowRow Given(string name, double? pressure, string where) => new(
            pressure is { } value ? [name, words.Pressure(value), where] : [name, "none given", "not looked at"]);
        var wood = context.Model.Pieces.Where(x => !RoleTable.Of(x.Role).StandsOnLanding).Sum(x => x.Mass * x.Occurrences.Length);
        return new FlowTable(
            "Loads, unfactored",
            "",
            [new("Load", 0.040), new("Value", 0.026), new("Where it acts, where it comes from", 0.072)],
            [
                new(["dead: wood in service", words.Mass(wood), "the parts' own volumes"]),
                new(["dead: fasteners, keepers", words.Mass(context.Layout.Parameters.Frames.HardwareMass), "each frame"]),
                new(["live", words.Pressure(l.Live), $"on the clear width; {l.LiveSource}"]),
                new(["live, share on one rope", QuantityText.Share(l.Eccentricity), "the area load to one side"]),
                new([
                    "point load", words.Force(l.PointForce),
                    $"patch of {words.Size(l.PointPatch)}, {words.Size(l.PointEdge)} from the posts at the edge",
                ]),
                Given("snow", l.Snow, "the project file"),
                new(["wind across", words.Pressure(l.Wind), l.WindSource]),
                Given("wind upward", l.Uplift, "on the deck"),
                .. l.Cases.Select(c => new FlowRow([c.Id, c.PointForce > 0 ? words.Force(c.PointForce) : "", "your own load case"])),
            ]);
    }

    private static FlowTable Wood(DrawingContext context) => new(
        "Wood",
        "Reference values and their sources stand with each check.",
        [new("Stock"), new("Species", 0.036), new("Grade"), new("Treatment", 0.030), new("For", 0.040)],
        [
            .. context.Model.Parameters.Stock.Select(s => new FlowRow(
            [
                s.Name, s.Species, s.Grade,
                s.Treated ? s.Incised ? "treated, incised" : "treated" : s.Durable ? "durable heartwood" : "none",
                string.Join(", ", context.Model.Pieces.Where(p => string.Equals(p.Stock, s.Name, StringComparison.Ordinal))
                    .Select(p => RoleTable.Of(p.Role).Printed).Distinct(StringComparer.Ordinal)),
            ])),
        ]);

    private static FlowTable Ropes(DrawingContext context)
    {
        var (p, words) = (context.Model.Parameters.Ropes, context.Text.Words);
        return new FlowTable(
            "Ropes",
            "",
            [new("What", 0.040), new("Value", 0.070)],
            [
                new(["two ropes", $"{p.Rope.Name}, {words.Size(p.Spacing)} apart"]),
                new(["breaking strength", $"{words.Force(p.Rope.BreakingStrength)} ({p.Rope.Source})"]),
                new([
                    "ends", p.TerminationKind + (p.TerminationEfficiency is { } share ? $", {QuantityText.Share(share)} of the rope" : ""),
                ]),
                new(["safety factor asked for", Numbers.Fixed(p.SafetyFactor, 1)]),
            ]);
    }

    /// <summary>Codes and handbooks that the checks of this bridge name, with how many do.</summary>
    private static FlowTable Sources(DrawingContext context) => new(
        "Codes and handbooks that the checks name",
        "Allowable stress, unfactored loads. Editions, clauses and what was taken from memory stand with each check.",
        [new("Name", 0.036), new("What it is", 0.066), new("Checks", Figures: true)],
        [
            .. Named.Select(n => (n.Name, n.Title, Count: context.Model.Checks.Count(
                    c => c.Source.Contains(n.Name, StringComparison.Ordinal))))
                .Where(n => n.Count > 0)
                .Select(n => new FlowRow([n.Name, n.Title, n.Count.ToString(CultureInfo.InvariantCulture)])),
        ]);

    /// <summary>By the names that the checks use for them; titles from memory.</summary>
    private static readonly ImmutableArray<(string Name, string Title)> Named =
    [
        ("NDS", "National Design Specification for Wood Construction, allowable stress"),
        ("EN 1995-1-1", "Eurocode 5, design of timber structures"),
        ("EN 338", "Structural timber, strength classes"),
        ("ASCE 7", "Minimum design loads for buildings and other structures"),
        ("IRC", "International Residential Code"),
        ("IBC", "International Building Code"),
        ("ADA", "Standards for Accessible Design"),
        ("AASHTO", "Guide specifications for pedestrian bridges; material specifications"),
        ("EUR 23984", "Design of lightweight footbridges for human induced vibrations"),
        ("8 CCR", "California Code of Regulations, wire rope clips"),
        ("WAC", "Washington Administrative Code, wire rope and clips"),
        ("TM 5-3810", "Technical manual, wire rope terminations"),
        ("NAVEDTRA 14026", "Rigging manual, spacing of clips"),
        ("RR-W-410", "Federal specification, wire rope"),
    ];
}

/// <summary>Notes that hold for all sheets.</summary>
internal static class GeneralNotes
{
    // The ids of more than so many below leave no room, and such a bridge is not built.
    private const int FailingWithoutRoom = 30;

    /// <summary>The notes in order.</summary>
    public static IEnumerable<string> Write(DrawingContext context)
    {
        var p = context.Model.Parameters;
        var words = context.Text.Words;
        yield return "Levels are heights above the rope's axis at support A; stations are measured level from A. Left and right are those "
            + "of someone walking from A to B."
            + (p.Site.North is null ? " North by others." : " North: needle on the plan.");
        yield return $"Shape: bridge complete and empty at {words.Temperature(p.Site.ReferenceTemperature)}. The crew sets the ropes by "
            + "the hoisting table, not by these levels.";
        yield return "Written figures go before measured ones; check a scale bar.";
        yield return "Wood touches rope nowhere but in the channels. Ease the channels' mouths. Zinc on the rope must not bear on "
            + "copper-treated wood: use a liner that is not metal.";
        yield return "Brush every cut, hole and channel in treated wood with field preservative. Fasteners in treated wood: hot-dip "
            + "galvanized or stainless.";
        yield return "Angles of cuts are from square, as a saw is set: miter / bevel. Signs: cut list. Templates and "
            + "saw set-ups: files of their own.";
        yield return "Supports, anchors, saddles and terminations are not designed here; forces on them: load cases."
            + (context.Model.Checks.Count(c => c.Status == Checks.CheckStatus.Fail) > FailingWithoutRoom
                ? ""
                : $" Not looked at: {Checks.Verdict.NotAskedText(p)}.");
    }
}
