using System.Collections.Concurrent;
using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Project;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>
/// A bridge of two bays, 12 ft long unless said otherwise, whose one frame on the ropes stands plumb in the middle: all of its
/// geometry has closed
/// forms, written out here from docs/bridge.md. Inches, until <see cref="Inch"/> makes metres of them.
/// </summary>
internal sealed record TwoBays
{
    public const double Inch = 0.0254;

    private const double Lumber = 1.5;
    private const double BaseThickness = 3.5;
    private const double BaseDepth = 5.5;
    private const double RopeRadius = 0.375;

    private static readonly ConcurrentDictionary<string, Lazy<CheckContext>> s_contexts = new(StringComparer.Ordinal);

    /// <summary>Half the span.</summary>
    public double Half { get; init; } = 72;

    public string Use { get; init; } = "private";

    public string Rope { get; init; } = "rope-6x19-iwrc-eips-galvanized-3/4";

    public double Spacing { get; init; } = 46;

    public double Sag { get; init; } = 8;

    /// <summary>The middle base's top below the end bases': what the end channels are deeper takes from the sag.</summary>
    public double Drop { get; init; } = 8;

    public double Depth { get; init; } = 0.625;

    public double Foot { get; init; } = 18.25;

    public double PostLength { get; init; } = 24;

    public double Lean { get; init; } = 8;

    /// <summary>Heights of the rails' centre lines along the posts.</summary>
    public string Rails { get; init; } = "[6 in, 12 in, 18 in]";

    /// <summary>More keys inside guard, with their comma before them.</summary>
    public string Guard { get; init; } = "";

    /// <summary>Boards along, gaps and counts.</summary>
    public string Deck { get; init; } = "deck: { count: 6 }";

    /// <summary>More keys inside site, channel and ropes, with their comma before them.</summary>
    public string Site { get; init; } = "";

    public string Channel { get; init; } = "";

    public string Ropes { get; init; } = "";

    /// <summary>More keys inside frames, one to a line, indented by two.</summary>
    public string Frames { get; init; } = "";

    /// <summary>More sections of the file.</summary>
    public string More { get; init; } = "";

    public double LeanRadians => Lean * Math.PI / 180;

    /// <summary>Slope of both chords, downward to the middle: sag over half the span.</summary>
    public double Chord => Math.Atan(Sag / Half);

    /// <summary>An upright frame's floor lies 1 / cos θ higher above its node; the middle one's rope is level there.</summary>
    public double EndDepth => Depth + Sag + (RopeRadius * ((1 / Math.Cos(Chord)) - 1)) - Drop;

    /// <summary>Top of an end base above the rope's point at the support: floor − depth + 5.5.</summary>
    public double EndTop => (RopeRadius / Math.Cos(Chord)) - EndDepth + BaseDepth;

    /// <summary>
    /// Fall over run of the deck's first bay. At its end base it lies on the edge, half of 3.5 in before the middle, so the
    /// fall is that of 72 − 1.75 in (of half the span).
    /// </summary>
    public double DeckFall => Drop / (Half - (BaseThickness / 2));

    /// <summary>How far the boards pass above the middle of an end base's top.</summary>
    public double Lift => BaseThickness / 2 * DeckFall;

    /// <summary>Fall over run of the first bay's cap and rails, whose frames' heads lie as far apart as the bases' tops.</summary>
    public double CapFall => Drop / Half;

    public string Text => string.Create(CultureInfo.InvariantCulture, $$"""
        name: Two bays (invented)
        units: imperial
        use: {{Use}}
        site: { span: {{2 * Half:0.##########}} in{{Site}} }
        ropes: { type: {{Rope}}, spacing: {{Spacing:0.##########}} in, sag: {{Sag:0.##########}} in{{Ropes}} }
        frames:
          spacing: {{Half + 2:0.##########}} in
          base: { section: 4x6, length: {{2 * (Foot + 10.75):0.##########}} in }
          channel: { depth: {{Depth:0.##########}} in, end_depth: {{EndDepth:0.##########}} in{{Channel}} }
          post: { section: 2x4, length: {{PostLength:0.##########}} in, lean: {{Lean:0.######}} deg, foot: {{Foot:0.##########}} in }
          brace: { section: 2x4, lean: 12 deg, foot: {{Foot + 10:0.##########}} in }
          {{Frames}}
        guard: { rails: { section: 1x4, heights: {{Rails}} }, cap: { section: 2x6 }{{Guard}} }
        {{Deck}}
        {{More}}
        """);

    /// <summary>Clear width between the posts' inner faces at the deck's surface, 1-1/2 in above the base.</summary>
    public double Between => 2 * (Foot + (Lumber * Math.Tan(LeanRadians)));

    /// <summary>
    /// A rail of the first bay. The post's inner face has the inward normal n = (0, sin α, −cos α); the rail falls along
    /// d = (cos φ, −sin φ, 0). Its own normal is n less its part along d, n·d = −sin φ·sin α, which leaves this length of it.
    /// </summary>
    public double RailNormal => Math.Sqrt(1 - Math.Pow(Math.Sin(Math.Atan(CapFall)) * Math.Sin(LeanRadians), 2));

    /// <summary>Vertical, of something 1-1/2 in thick that falls so.</summary>
    public static double Upright(double fall, double thickness = Lumber) => thickness * Math.Sqrt(1 + (fall * fall));

    public CheckContext Context => ContextOf(Text);

    public CheckResult Check(string id) => Contexts.Check(Context, id);

    /// <summary>
    /// Contexts are made once for each text. Wood weighs as much wet as in service here, so that the numbers by hand are those
    /// of every case; what wet wood adds has tests of its own.
    /// </summary>
    public static CheckContext ContextOf(string text) =>
        s_contexts.GetOrAdd(text, t => new Lazy<CheckContext>(() => Contexts.Of(NoWetter(Bridges.Read(t))))).Value;

    /// <summary>The same bridge of wood that weighs as much wet as in service.</summary>
    public static BridgeParameters NoWetter(BridgeParameters parameters) => parameters with
    {
        Stock = [.. parameters.Stock.Select(s => s with { Density = s.Density with { High = s.Density.InService } })],
    };
}
