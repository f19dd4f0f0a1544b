using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>What hangs on the ropes.</summary>
public enum BuildStage
{
    /// <summary>Nothing.</summary>
    Bare,

    /// <summary>All frames, fast on their marks; no deck, no guard.</summary>
    Frames,

    /// <summary>The whole bridge, empty.</summary>
    Complete,
}

/// <summary>What was measured of the ropes as they hang. Metres, degrees Celsius.</summary>
public sealed record AsBuiltParameters
{
    /// <summary>What hung on them then.</summary>
    public required BuildStage Stage { get; init; }

    /// <summary>Of the ropes then, °C.</summary>
    public required double Temperature { get; init; }

    /// <summary>Horizontal distance between the supports, metres.</summary>
    public required double Span { get; init; }

    /// <summary>Support B above support A, metres.</summary>
    public required double Rise { get; init; }

    /// <summary>Sag of the left rope at half the span, metres below the line between its points at both supports.</summary>
    public required double LeftSag { get; init; }

    /// <summary>The same of the right rope.</summary>
    public required double RightSag { get; init; }

    /// <summary>Share by which the ropes have grown for good since they were marked; 0: none seen.</summary>
    public required double Stretch { get; init; }
}

/// <summary>Keys under <c>as_built</c>, how they are read, what they must agree on.</summary>
internal static class AsBuiltSection
{
    // Two turnbuckles of 24 in, the longest on sale (makers' tables), move a rope's length by no more; metres. What is further
    // off was measured wrong, or is another bridge.
    private const double MostFed = 48 * Quantities.Units.MetresPerInch;

    public static KeySpec Keys => Define.OptionalMap(
        "as_built",
        "What was measured of the ropes as they hang; the command correct says what to turn",
        [
            Define.Choice("stage", "What hangs on the ropes when they are measured", "bare", "bare", "frames", "complete"),
            Define.Quantity(QuantityKind.Temperature, "temperature", "Of the ropes when they were measured", "-60 F", "140 F")
                .Needed("55 F", "12 C"),
            Define.Length("span", "Horizontal distance between the ropes' points at both supports", "3 ft", "20000 ft") with
            { DefaultNote = "site.span" },
            Define.Length("rise", "The rope's point at support B above that at A; may be negative", "-7000 ft", "7000 ft") with
            { DefaultNote = "site.rise" },
            Define.Map(
                "sag",
                "Sag at half the span, straight down from the line between a rope's points at both supports",
                [
                    Define.Length("left", "Of the left rope, looking from A to B", "1/16 in", "7000 ft").Needed("20 in", "500 mm"),
                    Define.Length("right", "Of the right rope", "1/16 in", "7000 ft").Needed("20-1/4 in", "506 mm"),
                ]),
            Define.Quantity(
                QuantityKind.Share, "stretch", "How much the ropes have grown for good since they were marked", "0 %", "3 %", "0 %"),
        ]);

    public static AsBuiltParameters? Read(FileValues v) => !v.Given("as_built") ? null : new AsBuiltParameters
    {
        Stage = v.Text("as_built.stage") switch
        {
            "frames" => BuildStage.Frames,
            "complete" => BuildStage.Complete,
            _ => BuildStage.Bare,
        },
        Temperature = v.Number("as_built.temperature"),
        Span = v.NumberOrNull("as_built.span") ?? v.Number("site.span"),
        Rise = v.NumberOrNull("as_built.rise") ?? v.Number("site.rise"),
        LeftSag = v.Number("as_built.sag.left"),
        RightSag = v.Number("as_built.sag.right"),
        Stretch = v.Number("as_built.stretch"),
    };

    /// <summary>What was measured is this bridge, and a rope of its length can hang so.</summary>
    public static void Check(CheckedFile f)
    {
        if (f.Parameters.AsBuilt is not { } built || !f.Good("as_built", "site.span", "site.rise", "ropes.sag"))
        {
            return;
        }

        // One sag does not tell how much of the stretch has come that the ropes were set short for: turned by the wrong half they are
        // drawn far too tight.
        if (f.Parameters.Ropes.New == NewRopeWay.AsIs && built.Stage != BuildStage.Bare && !f.Values.Given("as_built.stretch"))
        {
            f.Stop(FaultCode.MissingKey, "as_built", "as_built: say how much the ropes have stretched since they were set (stretch: "
                + "0.2 %; 0 % where nobody has walked on them): they were marked short for it (ropes.new: as-is), and a sag alone does "
                + "not tell how much has come");
        }

        var isThis = Same(f, "span", built.Span, f.Parameters.Site.Span) & Same(f, "rise", built.Rise, f.Parameters.Site.Rise);
        if (isThis)
        {
            Sag(f, "left", built.LeftSag);
            Sag(f, "right", built.RightSag);
        }
    }

    private static bool Same(CheckedFile f, string key, double measured, double drawn)
    {
        var path = "as_built." + key;
        if (!f.Good(path) || Math.Abs(measured - drawn) <= MostFed)
        {
            return f.Good(path);
        }

        f.Stop(FaultCode.AsBuiltOtherBridge, path, $"{key}: measured '{f.Written(path)}', but site.{key} is "
            + $"'{f.Written("site." + key)}': further apart than the longest "
            + $"turnbuckles on sale move a rope, two of them ({f.Length(MostFed)}). Measure again, or "
            + $"write site.{key} as it is and make everything anew");
        return false;
    }

    // Both lengths as of parabolas: what turns on the difference is whether feet were written for inches.
    private static void Sag(CheckedFile f, string side, double sag)
    {
        var path = "as_built.sag." + side;
        var (p, built) = (f.Parameters, f.Parameters.AsBuilt!);
        if (!f.Good(path))
        {
            return;
        }

        var has = SpanRules.RopeLength(p) * (1 + built.Stretch);
        var needs = SpanRules.RopeLength(built.Span, built.Rise, sag);
        if (Math.Abs(needs - has) > MostFed)
        {
            f.Stop(FaultCode.AsBuiltOtherRope, path, $"{side}: a rope that hangs '{f.Written(path)}' deep is {f.Length(needs)} long "
                + $"between the supports, but the rope of this bridge is {f.Length(has)} long there (ropes.sag "
                + $"'{f.Written("ropes.sag")}'): further apart than the longest turnbuckles on sale "
                + $"move it, two of them ({f.Length(MostFed)}). Measure again");
        }
    }
}
