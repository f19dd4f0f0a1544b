using System.Collections.Immutable;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Rails and cap.</summary>
public sealed record GuardParameters
{
    /// <summary>Section of a rail.</summary>
    public required Section Rail { get; init; }

    /// <summary>Stock of the rails.</summary>
    public required string RailStock { get; init; }

    /// <summary>Number of rails a side with equal gaps; ignored when <see cref="RailHeights"/> is not empty.</summary>
    public required int RailCount { get; init; }

    /// <summary>Heights of the rails' centre lines, up along the post from the base's top, metres; empty for equal gaps.</summary>
    public required ImmutableArray<double> RailHeights { get; init; }

    /// <summary>Section of the cap, lying flat.</summary>
    public required Section Cap { get; init; }

    /// <summary>Stock of the cap.</summary>
    public required string CapStock { get; init; }

    /// <summary>Pickets on two rails; null for a guard of rails alone.</summary>
    public PicketParameters? Pickets { get; init; }

    /// <summary>Netting on one rail; null for a guard without.</summary>
    public NetParameters? Net { get; init; }

    /// <summary>Handrail; null for none but what rails and cap are.</summary>
    public HandrailParameters? Handrail { get; init; }

    /// <summary>Shims lie on the posts' heads where a cap stands clear of them.</summary>
    public bool Shims { get; init; }

    /// <summary>Newels; null where the guards end at the end frames.</summary>
    public NewelParameters? Newels { get; init; }
}

/// <summary>Keys under <c>guard</c>, how they are read, and whether rails fit between deck and head.</summary>
internal static class GuardSection
{
    private const string Heights = "guard.rails.heights";
    private const string Count = "guard.rails.count";

    public static KeySpec Keys => Define.Map(
        "guard",
        "Rails and cap",
        [
            Define.Map(
                "rails",
                "Rails on the posts' inner faces",
                [
                    Define.Section("section", "Its wide face lies on the posts", "5/4x6", "28 x 145 mm"),
                    Define.Whole("count", "Rails a side, with equal gaps", "0", "200").ByRule(
                        "the post's length",
                        "as few as leave gaps of 3-1/2 in (89 mm) at most", "4"),
                    Define.List(
                        "heights",
                        "Heights of the rails' center lines up along the post from the base's top, in place of count",
                        Define.Length("", "Height", "0 in", "12 ft"),
                        0,
                        200) with
                    { Example = "[6 in, 12 in, 18 in]", MetricExample = "[150 mm, 300 mm, 450 mm]" },
                    Define.StockName("treated"),
                ]) with
            { OneOf = ["count", "heights"] },
            Define.Map(
                "cap",
                "The board on the posts' heads",
                [
                    Define.Section("section", "Lies flat", "2x6", "45 x 145 mm"),
                    Define.StockName("cedar"),
                ]),
        ]).AllStarting().With(
            PicketSection.Keys,
            HandrailSection.Keys,
            NettingSection.Keys,
            NewelSection.Keys,
            Define.Flag("shims", "Cap shims: tapered, on the posts' heads where a cap stands clear of them", "false"));

    public static GuardParameters Read(FileValues v) => new()
    {
        Rail = v.Section("guard.rails.section"),
        RailStock = v.Text("guard.rails.stock"),
        RailCount = v.Given(PicketSection.Path) ? PicketParameters.Rails
            : v.Given(NettingSection.Path) ? NetParameters.Rails
            : v.NumberOrNull("guard.rails.count") is { } count ? (int)count : v.Names("guard.rails.heights").Count,
        RailHeights = [.. v.Items("guard.rails.heights").Select(v.Number)],
        Cap = v.Section("guard.cap.section"),
        CapStock = v.Text("guard.cap.stock"),
        Pickets = PicketSection.Read(v),
        Net = NettingSection.Read(v),
        Handrail = HandrailSection.Read(v),
        Newels = NewelSection.Read(v),
        Shims = v.Flag("guard.shims"),
    };

    public static void Check(CheckedFile f)
    {
        PicketSection.Check(f);
        HandrailSection.Check(f);
        NewelSection.Check(f);
        NettingSection.Check(f);
        if (!f.Good(
            "guard.rails.section", Heights, Count, "deck.layout", "deck.board.section", "deck.stringer.section", "frames.post.length",
            "frames.post.lean") || f.Parameters.Guard.Pickets is not null || f.Parameters.Guard.Net is not null)
        {
            return;
        }

        var p = f.Parameters;
        var low = p.Deck.Thickness / Elementary.Cos(p.Frames.Post.Lean);
        if (f.Values.Given(Heights))
        {
            ByHeight(f, low, p.Frames.Post.Length);
        }
        else
        {
            ByCount(f, p.Frames.Post.Length - low);
        }
    }

    private static void ByCount(CheckedFile f, double room)
    {
        var rail = f.Parameters.Guard.Rail.Width;
        var count = f.Parameters.Guard.RailCount;
        if (count * rail < room - Tolerances.RoundOff)
        {
            return;
        }

        var most = (int)Math.Max(0, Math.Ceiling(room / rail) - 1);
        f.Stop(FaultCode.TooManyRails, Count, FormattableString.Invariant($"count: {count} rails of {f.Size(rail)} do not fit between ")
            + FormattableString.Invariant($"deck and head, {f.Size(Math.Max(0, room))} along the post; write at most {most}"),
            "guard.rails.section", "frames.post.length");
    }

    private static void ByHeight(CheckedFile f, double low, double high)
    {
        var guard = f.Parameters.Guard;
        var half = guard.Rail.Width / 2;
        var paths = f.Values.Items(Heights).ToList();
        for (var i = 0; i < paths.Count; i++)
        {
            var h = guard.RailHeights[i];
            if (h < low + half - Tolerances.RoundOff || h > high - half + Tolerances.RoundOff)
            {
                f.Stop(FaultCode.RailOutOfGuard, paths[i], $"heights: '{f.Written(paths[i])}' puts a rail's edge below the deck's surface "
                    + $"or above the post's head; allowed is {f.AtLeast(low + half)} to {f.AtMost(high - half)}");
            }
            else if (i > 0 && h < guard.RailHeights[i - 1] + guard.Rail.Width - Tolerances.RoundOff)
            {
                f.Stop(FaultCode.RailOnRail, paths[i], $"heights: '{f.Written(paths[i])}' lies on the rail before it; list heights from "
                    + $"the lowest up, here at least {f.AtLeast(guard.RailHeights[i - 1] + guard.Rail.Width)}");
            }
        }
    }
}
