using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Checks.Timber;
using BridgeForm.Quantities;

namespace BridgeForm.Tests.Checks.Catalogue.Timber;

/// <summary>
/// A bridge of two bays whose end channels are deeper by the sag, so that deck, rails and caps lie dead level: every stick is a
/// plain prism, every span the plain distance of two frames. Inches and pounds, for a pocket calculator. Treated wood weighs
/// 36 lb/ft³ = 1/48 lb/in³ (dry 27, 1/64), cedar 27 lb/ft³ = 1/64 lb/in³ (dry 18, 1/96).
/// </summary>
internal sealed record LevelDeck
{
    public const double Inch = 0.0254;
    public const double Pound = Units.PoundForce;
    public const double Psi = Pound / (Inch * Inch);

    private const double Sag = 1;
    private const double RopeRadius = 0.375;

    public string Use { get; init; } = "private";

    /// <summary>Distance of the frames in plan.</summary>
    public double Bay { get; init; } = 72;

    /// <summary>Of the ropes.</summary>
    public double Spacing { get; init; } = 46;

    public string Base { get; init; } = "section: 3x6";

    public double BaseLength { get; init; } = 58;

    /// <summary>Of the middle base's channels.</summary>
    public double Depth { get; init; } = 0.625;

    public string Channel { get; init; } = "";

    public string Keeper { get; init; } = "{ hole: 0 in }";

    /// <summary>Pounds.</summary>
    public double Hardware { get; init; } = 3;

    public double PostLength { get; init; } = 24;

    public string Post { get; init; } = "section: 2x4";

    public string Deck { get; init; } = "{ count: 6 }";

    public string Rails { get; init; } = "{ section: 1x4, heights: [12 in] }";

    public string Loads { get; init; } = "{ live: 60 psf }";

    /// <summary>Of the treated stock, and of the cedar.</summary>
    public string Species { get; init; } = "southern-pine";

    public string Cedar { get; init; } = "western-red-cedar";

    /// <summary>Rows of values.</summary>
    public string Values { get; init; } = "[]";

    /// <summary>More sections of the file.</summary>
    public string More { get; init; } = "";

    /// <summary>What the end channels are deeper makes up for the sag; upright, their floor lies 1 / cos θ higher.</summary>
    private double EndDepth => Depth + Sag + (RopeRadius * (Math.Sqrt(1 + (Sag * Sag / (Bay * Bay))) - 1));

    /// <summary>From node to node.</summary>
    public double Chord => Math.Sqrt((Bay * Bay) + (Sag * Sag));

    private string Text => string.Create(CultureInfo.InvariantCulture, $$"""
        name: Level deck (invented)
        units: imperial
        use: {{Use}}
        site: { span: {{2 * Bay:0.##########}} in }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: {{Spacing:0.##########}} in, sag: 1 in }
        frames:
          spacing: {{Bay + 1:0.##########}} in
          base: { {{Base}}, length: {{BaseLength:0.##########}} in }
          channel: { depth: {{Depth:0.##############}} in, end_depth: {{EndDepth:0.##############}} in{{Channel}} }
          keeper: {{Keeper}}
          post: { {{Post}}, length: {{PostLength:0.##########}} in, lean: 8 deg, foot: 18-1/4 in }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }
          hardware: {{Hardware}} lb
        deck: {{Deck}}
        guard: { rails: {{Rails}}, cap: { section: 2x6 } }
        loads: {{Loads}}
        stock:
          treated: { species: {{Species}}, grade: no1, treated: true, lengths: [20 ft], density: { low: 27 lb/ft3, in_service: 36 lb/ft3, high: 50 lb/ft3 } }
          cedar: { species: {{Cedar}}, grade: no2, lengths: [20 ft], density: { low: 18 lb/ft3, in_service: 27 lb/ft3, high: 30 lb/ft3 } }
        values: {{Values}}
        {{More}}
        """);

    /// <summary>Values come late: ropes, layout and contacts know nothing of them and are made once for all.</summary>
    /// <summary>
    /// Its frames do not lean in any case, so that the numbers by hand are those of every case; what leaning adds has tests of its
    /// own.
    /// </summary>
    public CheckContext Context => Leaning(0, 0);

    /// <summary>The same as if frames leaned so far under live load and snow, and under the point load, radians.</summary>
    public CheckContext Leaning(double area, double point)
    {
        var context = TwoBays.ContextOf((this with { Values = "[]" }).Text);
        return context with
        {
            Parameters = TwoBays.NoWetter(Bridges.Read(Text)),
            Ropework = context.Ropework with
            {
                Cases =
                [
                    .. context.Cases.Select(c => c with { CrossSlope = c.Id is "live-side" ? area : c.Id is "point-edge-mid" ? point : 0 }),
                ],
            },
        };
    }

    /// <summary>The same of wood that gets wet: treated 50 lb/ft³, cedar 30.</summary>
    public CheckContext Wet
    {
        get
        {
            var (context, parameters) = (Context, Bridges.Read(Text));
            return context with { Parameters = parameters, Layout = context.Layout with { Parameters = parameters } };
        }
    }

    public CheckResult Check(string id)
    {
        var context = Context;
        return s_checks.SelectMany(of => of(context)).First(c => c.Id == id);
    }

    // Checks of timber in their order, each run only when the one looked for has not come before it.
    private static readonly Func<CheckContext, IEnumerable<CheckResult>>[] s_checks =
    [
        DeckBending.Check, DeckShear.Check, DeckDeflection.Check, HoleSizes.Check, HoleDistances.Check,
        CapSpan.Check, RailSpan.Check, PicketSpan.Check, NetLoad.Check, HandrailSpan.Check, Newels.Check, GuardJoints.Check,
        HeldJoints.Check, KeeperUplift.Check,
        DeckBearing.Check, GuardBearing.Check, EndFrames.Check, c => [EndDistance.Check(c)],
        c => [GuardPost.Check(c)], c => [GuardPostShear.Check(c)], c => [GuardPostAlong.Check(c)],
        c => [GuardBrace.Check(c)], RopeBearing.Check,
        BaseBending.Check, BaseShear.Check, EndBase.Check, ChannelFaces.Check,
    ];

    /// <summary>
    /// The same with values of its own, psi, that no table's factor for size or wet service touches: what is not named is so
    /// large, or so stiff, that it does not count.
    /// </summary>
    public LevelDeck With(
        string size,
        double bending = 20000,
        double tension = 20000,
        double shear = 20000,
        double compression = 20000,
        double modulus = 1600000,
        double least = 580000,
        double across = 565,
        string wood = "southern-pine, grade: no1") => this with
        {
            Values = string.Create(
                CultureInfo.InvariantCulture,
                $"[{{ species: {wood}, size: {size}, bending: {bending:R} psi, tension: {tension:R} psi, shear: {shear:R} psi, "
                    + $"compression_across: {across:R} psi, compression: {compression:R} psi, modulus: {modulus:R} psi, modulus_min: "
                    + $"{least:R} psi, wet: true, size_adjusted: true, source: invented }}]"),
        };

    /// <summary>Wood that no table has.</summary>
    public LevelDeck Unknown => this with { Species = "white-oak", Cedar = "white-oak" };

    /// <summary>
    /// The reference value times its other factors at which a stability factor of the Ylinen form leaves <paramref name="left"/>:
    /// c·C² − (1 + FE/F)·C + FE/F = 0 with C = left/F, so F = left·(FE − c·left)/(FE − left). NDS 3.3.3.8: c 0.95; 3.7.1.5: c 0.8.
    /// </summary>
    public static double Before(double left, double euler, double c) => left * (euler - (c * left)) / (euler - left);
}
