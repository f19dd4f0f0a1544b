using BridgeForm.Quantities;

namespace BridgeForm.Checks.Geometry;

/// <summary>How far a base may shift sideways on its ropes.</summary>
internal static class ChannelRoom
{
    // Own figure, in whole millimetres where the file has those: a rope swollen by rust and a channel cut by hand need no more.
    private static double MostIn(UnitSystem units) => units == UnitSystem.Metric ? 6e-3 : Units.MetresPerInch / 4;

    /// <summary>The check.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "channel-clearance",
        "Room beside the rope in its channel",
        "Channel's width less rope and two liners, half of it to either side, against 1/4 in, in a metric file 6 mm. More "
            + "is to review: the bases shift sideways on the ropes by as much.",
        "own figure: 1/4 in (6 mm) to either side of the rope",
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>All channels are alike.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var words = context.Words();
        var channel = context.Parameters.Frames.Channel;
        var rope = context.Parameters.Ropes.Rope.Diameter;
        var most = MostIn(words.Units);
        var side = Math.Max(0, channel.Width - rope - (2 * channel.Liner)) / 2;
        return Outcome.AtMost(
            Declared,
            side,
            most,
            "m",
            Declared.Source,
            $"(channel {words.Length(channel.Width)} − rope {words.Length(rope)} − 2 × liner {words.Length(channel.Liner)}) / 2 = "
                + $"{words.Length(side)} to either side; at most {words.Length(most)}",
            CheckStatus.Warn).OnBase(context, 0);
    }
}
