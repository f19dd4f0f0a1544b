using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Checks;

/// <summary>Height of the guard: vertical, from the deck's surface at its middle line to the cap's top, where it is least.</summary>
internal static class GuardHeight
{
    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "guard-height",
        "Guard height above the deck",
        "Vertical height from the deck's surface at its middle line to the cap's top, where it is least, against 36 in private, 42 in public.",
        "IRC 2018 R312.1.2; IBC 1015.3",
        [CheckStatus.Pass, CheckStatus.Fail]);

    /// <summary>The least height of all bays against the code's.</summary>
    public static CheckResult Of(CheckContext context)
    {
        var (height, at) = Least(context);
        var (needed, source) = Limits.GuardHeight(context.Parameters.Use);
        var words = context.People();
        return Outcome.AtLeast(
            Declared, height, needed, "m", source,
            $"least in {at}: {words.Length(height)}, needed {words.Length(needed)}");
    }

    /// <summary>The least height in metres and the frame where it is.</summary>
    public static (double Height, string Frame) Least(CheckContext context)
    {
        var layout = context.Layout;
        var deck = Surface(layout.Deck, layout.Parameters.Deck.Thickness, layout.Bays);
        var cap = Surface(layout.Caps, layout.Parameters.Guard.Cap.Thickness, layout.Bays);
        var best = double.PositiveInfinity;
        var frame = "";
        for (var i = 0; i <= layout.Bays; i++)
        {
            foreach (var p in (ReadOnlySpan<Vector3d>)[.. At(deck, i), .. At(cap, i)])
            {
                var height = HeightAt(cap, p.X) - HeightAt(deck, p.X);
                if (height < best)
                {
                    (best, frame) = (height, layout.Poses[i].Name);
                }
            }
        }

        return (best, frame);
    }

    private static Vector3d[] At((Vector3d From, Vector3d To)[] line, int frame)
    {
        if (frame == 0)
        {
            return [line[0].From];
        }

        return frame == line.Length ? [line[^1].To] : [line[frame - 1].To, line[frame].From];
    }

    /// <summary>Top line of each bay's part.</summary>
    private static (Vector3d From, Vector3d To)[] Surface(BearingLine line, double thickness, int bays)
    {
        var parts = new (Vector3d From, Vector3d To)[bays];
        for (var bay = 1; bay <= bays; bay++)
        {
            var up = thickness * Vector3d.UnitZ.Cross(line.Direction(bay));
            parts[bay - 1] = (line.Points[bay - 1] + up, line.Points[bay] + up);
        }

        return parts;
    }

    /// <summary>Height of a chain of parts at a place along the bridge; its first and last part go on beyond their ends.</summary>
    private static double HeightAt((Vector3d From, Vector3d To)[] line, double x)
    {
        int low = 0, high = line.Length - 1;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = line[middle].To.X < x ? (middle + 1, high) : (low, middle);
        }

        var (from, to) = line[low];
        return from.Y + ((x - from.X) / (to.X - from.X) * (to.Y - from.Y));
    }
}
