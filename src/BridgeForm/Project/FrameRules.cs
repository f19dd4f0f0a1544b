using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Defaults of bases, channels, posts, braces and rails. Own figures (<see cref="DefaultRules"/>). Metres.</summary>
internal static class FrameRules
{
    // A gap is a little wider where guard and deck slope: half an inch is left to the 4 in sphere of the codes.
    private const double WidestGap = 3.5 * Units.MetresPerInch;

    // End frames of 312 bare bridges of 10 to 60 ft with rises to 1 : 5 leaned up to 1.107 times as much. Own figure.
    private const double SteeperThanParabola = 1.11;

    // As many as the key takes.
    private const int MostRails = 200;

    /// <summary>What a brace's foot hangs on.</summary>
    public static ImmutableArray<string> BraceKeys { get; } =
    [
        "frames.post.section", "frames.post.lean", "frames.post.foot", "frames.brace.section", "frames.brace.lean", "frames.brace.foot",
        "frames.brace.length",
    ];

    /// <summary>What the deck's thickness hangs on.</summary>
    public static ImmutableArray<string> DeckKeys { get; } = ["deck.layout", "deck.board.section", "deck.stringer.section"];

    /// <summary>Outside the post by what a brace of usual lean needs; further where metric sizes of wood carry a public guard.</summary>
    public static string BraceFoot(FileValues v)
    {
        var tape = new RuleTape(v.Units);
        return tape.Text(
            v.Number("frames.post.foot") + tape.Of(9.75, v.Text("use") is "public" ? 290 : 260), "frames.brace.foot");
    }

    /// <summary>From the middle of the base to the middle of a brace's foot.</summary>
    public static double BraceMiddle(FileValues v)
    {
        var brace = Brace(v);
        return brace.Foot - (brace.Section.Width / Elementary.Cos(brace.Lean) / 2);
    }

    /// <summary>Wood beyond the channels for the keepers, and under the braces.</summary>
    public static string BaseLength(FileValues v)
    {
        var tape = new RuleTape(v.Units);
        var least = Math.Max(v.Number("ropes.spacing") + tape.Of(14, 350), (2 * Brace(v).Foot) + tape.Of(1, 25));
        return tape.Text(Rounding.Up(least, tape.Of(1, 10)), "frames.base.length");
    }

    /// <summary>No deeper than that a flat strap clamps the rope.</summary>
    public static string ChannelDepth(FileValues v, RopeCatalogue ropes)
    {
        var tape = new RuleTape(v.Units);
        return tape.Text(Math.Min(tape.Of(0.625, 16), Clamped(v, ropes, tape)), "frames.channel.depth");
    }

    /// <summary>The same at the ends, but where the rope is steep so deep that it lies in the shallow mouth too.</summary>
    public static string EndDepth(FileValues v, RopeCatalogue ropes)
    {
        var tape = new RuleTape(v.Units);
        var mouth = (Rope(v, ropes) / 4) + (EndAlong(v) / 2 * EndSlope(v));
        var usual = Math.Min(tape.Of(0.75, 19), Clamped(v, ropes, tape));
        return tape.Text(double.IsFinite(mouth) ? Math.Max(usual, tape.Up(mouth)) : usual, "frames.channel.end_depth");
    }

    private static double Clamped(FileValues v, RopeCatalogue ropes, RuleTape tape) =>
        tape.Down(Rope(v, ropes) + v.Number("frames.channel.liner"));

    private static double Rope(FileValues v, RopeCatalogue ropes) =>
        v.NumberOrNull("ropes.type.diameter") ?? ropes.Find(v.Text("ropes.type"))?.Diameter ?? double.PositiveInfinity;

    // Of a base along the bridge.
    private static double EndAlong(FileValues v) => v.Section("frames.base.section") is var section && v.Flag("frames.base.flat")
        ? section.Width : section.Thickness;

    // Of a parabola's first bay at the steeper end, and a little more.
    private static double EndSlope(FileValues v)
    {
        var (span, spacing) = (v.Number("site.span"), v.Number("frames.spacing"));
        return SteeperThanParabola
            * (Math.Abs(v.Number("site.rise")) + (4 * RopeSection.Sag(v) * Math.Max(0, 1 - (spacing / span)))) / span;
    }

    /// <summary>So high that the guard is high enough where the deck slopes.</summary>
    public static string PostLength(FileValues v)
    {
        // IRC 2018 R312.1.2: 36 in; IBC 1015.3: 42 in.
        var guard = (v.Text("use") is "public" ? 42 : 36) * Units.MetresPerInch;
        var tape = new RuleTape(v.Units);
        var upright = guard + tape.Of(3.5, 89) + DeckSection.Read(v).Thickness - v.Section("guard.cap.section").Thickness;
        return tape.Text(Rounding.Up(upright / Elementary.Cos(v.Number("frames.post.lean")), tape.Of(0.5, 10)), "frames.post.length");
    }

    /// <summary>As few as leave no gap too wide, of those that find room.</summary>
    public static string RailCount(FileValues v)
    {
        var rail = v.Section("guard.rails.section").Width;
        var room = v.Number("frames.post.length") - (DeckSection.Read(v).Thickness / Elementary.Cos(v.Number("frames.post.lean")));
        var most = (int)Math.Clamp(Math.Ceiling((room - Tolerances.RoundOff) / rail) - 1, 0, MostRails);
        var count = 0;
        while (count < most && (room - (count * rail)) / (count + 1) > WidestGap + Tolerances.RoundOff)
        {
            count++;
        }

        return count.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Between the posts' inner faces at the deck's surface.</summary>
    public static double ClearWidth(FileValues v) =>
        2 * (v.Number("frames.post.foot") + (DeckSection.Read(v).Thickness * Elementary.Tan(v.Number("frames.post.lean"))));

    private static BraceParameters Brace(FileValues v) => UprightSection.Brace(v, UprightSection.Post(v));
}

/// <summary>Lengths of rules in the units of a file.</summary>
internal readonly record struct RuleTape(UnitSystem Units)
{
    private const double Inch = Quantities.Units.MetresPerInch;

    /// <summary>A length that a rule gives in inches and in millimetres, metres.</summary>
    public double Of(double inches, double millimetres) => Units == UnitSystem.Metric ? millimetres / 1000 : inches * Inch;

    /// <summary>Down to what can be measured.</summary>
    public double Down(double metres) => Rounding.Down(metres, Rounding.Step(Units));

    /// <summary>Up to what can be measured.</summary>
    public double Up(double metres) => Rounding.Up(metres, Rounding.Step(Units));

    /// <summary>As a person would write it, within what the key takes.</summary>
    public string Text(double metres, string path)
    {
        var spec = ProjectKeys.At(path);
        return new QuantityText(Units).Size(Math.Clamp(metres, Bound(spec.Least!), Bound(spec.Most!)));
    }

    private static double Bound(string text) => QuantityReader.Read(QuantityKind.Length, text).Value;
}
