namespace BridgeForm.Checks.Timber;

/// <summary>Wood that a base keeps beyond its channels, against shear along the grain and splitting.</summary>
internal static class EndDistance
{
    // Diameters from the rope's axis, and from a keeper hole, to the end of the stick.
    private const double Diameters = 4;

    private const string Source =
        "shear NDS 3.4 (ASD); 4 diameters: end distance of bolts loaded across the grain, NDS 2018 Table 12.5.1A, taken for the rope "
            + "as well (own reading)";

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "base-end-distance",
        "Base beyond its channels",
        "Wood from a channel's outer wall to the base's end, against the most of three: what bears one push of guard-post whole, by one "
            + "rope on the wall, in shear along the grain over the length and breadth of that block (3/2 × push / (b × Fv')); 4 rope "
            + "diameters from the rope's axis; 4 diameters from the outer keeper hole's.",
        Source,
        [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>All bases are alike.</summary>
    public static CheckResult Check(CheckContext context) => Compare(context).OnBase(context, 0);

    private static CheckResult Compare(CheckContext context)
    {
        var words = context.Words();
        var frames = context.Parameters.Frames;
        var half = frames.Channel.Width / 2;
        var had = (frames.Base.Length - context.Parameters.Ropes.Spacing) / 2 - half;
        var diameter = context.Parameters.Ropes.Rope.Diameter;
        var split = (Diameters * diameter) - half;
        var text = $"{words.Length(frames.Base.Length)} / 2 − {words.Length(context.Parameters.Ropes.Spacing)} / 2 − {words.Length(half)} "
            + $"of channel = {words.Length(had)}; "
            + $"against splitting 4 × {words.Length(diameter)} of rope − {words.Length(half)} = {words.Length(split)}";
        if (frames.Keeper.Hole > 0)
        {
            var hole = (frames.Keeper.Spread / 2) + (Diameters * frames.Keeper.Hole) - half;
            split = Math.Max(split, hole);
            text += $", at the keeper hole {words.Length(frames.Keeper.Spread)} / 2 + 4 × {words.Length(frames.Keeper.Hole)} − "
                + $"{words.Length(half)} = {words.Length(hole)}";
        }

        var push = GuardPush.List(context).MaxBy(p => p.Force)!;
        if (BaseSection.Shear(context, LoadDuration.Guard) is not { } strength)
        {
            return had < split
                ? Outcome.AtLeast(Declared, had, split, "m", Source, text)
                : BaseSection.Missing(context).Result(Declared, had, "m", Source, text);
        }

        var shear = 3 * push.Force / (2 * frames.Base.Along * strength.Value);
        return Outcome.AtLeast(
            Declared,
            had,
            Math.Max(split, shear),
            "m",
            $"{Source}; {GuardPush.Source}; {strength.Sources}",
            $"{text}; against shear, {push.Name}: 3 × {words.Pounds(push.Force)} / (2 × {words.Length(frames.Base.Along)} × "
                + $"{words.Stress(strength.Value)}) = {words.Length(shear)}, {strength.Text(words)}");
    }
}
