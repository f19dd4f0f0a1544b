using BridgeForm.Checks;
using static BridgeForm.Tests.Checks.Catalogue.Timber.LevelDeck;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>Channels as notches (NDS 4.4.3 and 3.2.3, from memory), and holes (IRC R502.8.1), of bases 5.5 in deep.</summary>
internal static class ChannelProofs
{
    // The brace pulls the bottom when somebody pushes inward: d/6 = 0.9167 in.
    [Proves("base-channel-notch", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-notch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Deep(double share) => new Proof(
        new LevelDeck { Depth = 5.5 / 6 * share }.Check("base-channel-notch"), 5.5 / 6 * share * Inch,
        5.5 / 6 * Inch).Saying("d/6 = 0.917 in");

    // d/3 = 1.8333 in wide.
    [Proves("base-channel-notch", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-notch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Wide(double share)
    {
        var width = 5.5 / 3 * share;
        var check = new LevelDeck { Depth = 0.25, Channel = FormattableString.Invariant($", width: {width:R} in") }.Check(
            "base-channel-notch");
        return share > 1
            ? new Proof(check, width * Inch, 5.5 / 3 * Inch).Saying("d/3 = 1.833 in")
            : new Proof(
                new LevelDeck { Depth = 5.5 / 6 * share, Channel = FormattableString.Invariant($", width: {width:R} in") }
                    .Check("base-channel-notch"),
                5.5 / 6 * share * Inch, 5.5 / 6 * Inch);
    }

    // 3-1/2 in thick: no notch on the pulled side at all.
    [Proves("base-channel-notch", CheckStatus.Fail)]
    public static Proof Thick() => new Proof(
        new LevelDeck { Base = "section: 4x6" }.Check("base-channel-notch"), 0.625 * Inch,
        0).Saying("base 3.5 in thick", "bottom in tension: ", "200 lbf inward ");

    // A rounded 3-1/2 in is as thick; 88 mm are not.
    [Proves("base-channel-notch", CheckStatus.Fail)]
    public static Proof ThickRounded() => new Proof(
        new LevelDeck { Base = "section: 89 x 140 mm" }.Check("base-channel-notch"), 0.625 * Inch, 0).Saying("base 3.504 in thick");

    [Proves("base-channel-notch", CheckStatus.Pass)]
    public static Proof NotThick() => new Proof(
        new LevelDeck { Base = "section: 88 x 140 mm" }.Check("base-channel-notch"), 0.625 * Inch, 0.14 / 6).Saying("d/6 = 0.919 in");

    // Ropes outside the braces' feet: the top is in tension, d/4 = 1.375 in. Its net section does not carry 60,000 lbf.
    [Proves("base-channel-notch", CheckStatus.Pass, Side.Within)]
    [Proves("base-channel-notch", CheckStatus.Fail, Side.Beyond)]
    public static Proof Outside(double share) => new Proof(
        Outwards(1.375 * share, 60000).Check("base-channel-notch"), 1.375 * share * Inch, 1.375 * Inch).Saying("d/4 = 1.375 in");

    // 1.5 in deep, of the strongest wood: what is left carries its loads.
    [Proves("base-channel-notch", CheckStatus.Pass)]
    public static Proof NetSectionPasses() => new Proof(
        Outwards(1.5, 300).With("3x6").Check("base-channel-notch"),
        1.5 * Inch).Saying("d/4 = 1.375 in", "deeper, but the net section passes");

    // A third of the post's wide face, 3.5 in.
    [Proves("hole-size", CheckStatus.Pass, Side.Within)]
    [Proves("hole-size", CheckStatus.Fail, Side.Beyond)]
    public static Proof Hole(double share) => Drilled("post", "face: wide, from_end: 20 in", 3.5 / 3, share);

    // Of its narrow face, 1.5 in.
    [Proves("hole-size", CheckStatus.Pass, Side.Within)]
    [Proves("hole-size", CheckStatus.Fail, Side.Beyond)]
    public static Proof HoleFromAbove(double share) => Drilled("brace", "face: top, from_end: 8 in", 0.5, share);

    // Of the base's thickness, 2.5 in, from below.
    [Proves("hole-size", CheckStatus.Pass, Side.Within)]
    [Proves("hole-size", CheckStatus.Fail, Side.Beyond)]
    public static Proof HoleFromBelow(double share) => Drilled("base", "face: bottom, from_end: 29 in", 2.5 / 3, share);

    // A keeper's hole is one as well: 1/4 in of 2.5 in.
    [Proves("hole-size", CheckStatus.Pass)]
    public static Proof Keeper() => new(
        new LevelDeck { Keeper = "{ hole: 1/4 in, depth: 2 in }" }.Check("hole-size"), 0.25 * Inch, 2.5 / 3 * Inch);

    private static LevelDeck Outwards(double depth, double force) => new()
    {
        Spacing = 54,
        BaseLength = 62,
        Depth = depth,
        Loads = FormattableString.Invariant($"{{ live: 60 psf, point: {{ force: {force} lbf }} }}"),
    };

    private static Proof Drilled(string part, string where, double limit, double share) => new(
        new LevelDeck { More = FormattableString.Invariant($"holes: {{ {part}: [{{ {where}, diameter: {limit * share:R} in }}] }}") }
            .Check("hole-size"),
        limit * share * Inch,
        limit * Inch);
}
