using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Reading;

namespace BridgeForm.Project;

/// <summary>How the default of one key is worked out.</summary>
/// <param name="Path">The key.</param>
/// <param name="From">
/// Values that it looks at: given, of a fixed default, or chosen by a rule before this one. What is wrong with one of them is told
/// there, and not once more of what follows from it.
/// </param>
/// <param name="Text">The value from them, as a person would write it.</param>
internal sealed record DefaultRule(string Path, ImmutableArray<string> From, Func<FileValues, RopeCatalogue, string> Text);

/// <summary>
/// Defaults that follow other values, above all the span, so that a file that says no more than that makes a bridge that holds. Own
/// figures throughout, found by building bridges of 10 to 60 ft (3 to 18 m), private and public, level, and looking at every check.
/// </summary>
internal static class DefaultRules
{
    /// <summary>Each looks only at values that do not hang on a rule, or on one above it.</summary>
    public static ImmutableArray<DefaultRule> All { get; } =
    [
        new(
            "frames.post.length",
            ["use", "frames.post.lean", "guard.cap.section", .. FrameRules.DeckKeys],
            (v, _) => FrameRules.PostLength(v)),
        new(
            "guard.rails.count",
            ["frames.post.length", "frames.post.lean", "guard.rails.section", .. FrameRules.DeckKeys],
            (v, _) => FrameRules.RailCount(v)),
        new("frames.brace.foot", ["frames.post.foot", "use"], (v, _) => FrameRules.BraceFoot(v)),
        new(
            "ropes.spacing",
            [
                "use", "site.span", "frames.base.length", "frames.base.section", "frames.base.flat", .. FrameRules.BraceKeys,
                .. JointSection.RopeKeys,
            ],
            (v, _) => RopeRules.Spacing(v)),
        new("frames.base.length", ["ropes.spacing", .. FrameRules.BraceKeys], (v, _) => FrameRules.BaseLength(v)),
        new("ropes.sag", ["ropes.spacing"], (v, _) => RopeRules.Sag(v)),
        new(
            "ropes.type",
            [
                "use", "site.span", "site.rise", "site.temperatures", "site.reference_temperature", "ropes.sag", "ropes.on_sale",
                "ropes.termination.efficiency", "ropes.safety_factor", "loads.live", "loads.snow", "loads.eccentricity",
                .. FrameRules.DeckKeys, "frames.post.foot", "frames.post.lean", "frames.spacing", .. JointSection.KindKeys,
            ],
            RopeRules.Rope),
        new("frames.channel.depth", ["ropes.type", "frames.channel.liner"], FrameRules.ChannelDepth),
        new(
            "frames.channel.end_depth",
            [
                "ropes.type", "frames.channel.liner", "site.span", "site.rise", "ropes.sag", "frames.spacing", "frames.base.section",
                "frames.base.flat",
            ],
            FrameRules.EndDepth),
    ];

    /// <summary>Fills in what the file leaves out. Returns what was chosen, in the order of the file's sections.</summary>
    public static ImmutableArray<ChosenDefault> FillIn(FileValues values, SpecWalker walker, RopeCatalogue ropes)
    {
        var chosen = ImmutableArray.CreateBuilder<ChosenDefault>();
        foreach (var rule in All.Where(r => IsOpen(values, r.Path)))
        {
            var spec = ProjectKeys.At(rule.Path);
            var text = rule.Text(values, ropes);
            walker.Choose(spec, rule.Path, text, values.Good(rule.From.AsSpan()));
            chosen.Add(new ChosenDefault(rule.Path, text, spec.DefaultNote!));
        }

        var sections = ProjectKeys.Root.Keys.Select(k => k.Name).ToList();
        return [.. chosen.OrderBy(c => sections.IndexOf(c.Path[..c.Path.IndexOf('.', StringComparison.Ordinal)]))];
    }

    // Pickets stand on two rails, a net hangs to one.
    private static bool IsUnasked(FileValues values, string path) =>
        path is "guard.rails.count" && (values.Given(PicketSection.Path) || values.Given(NettingSection.Path));

    // Neither given, nor another key in its place.
    private static bool IsOpen(FileValues values, string path)
    {
        var end = path.LastIndexOf('.');
        var above = path[..end];
        var others = ProjectKeys.At(above).OneOf;
        return values.Find(path) is null && !IsUnasked(values, path)
            && !(others.Contains(path[(end + 1)..], StringComparer.Ordinal) && others.Any(o => values.Given($"{above}.{o}")));
    }
}
