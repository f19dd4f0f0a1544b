using BridgeForm.Checks.Geometry;
using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Checks.Codes;

/// <summary>Whether a hand closes around the handrail and slides along it.</summary>
internal static class HandrailGrip
{
    /// <summary>Its size.</summary>
    public static DeclaredCheck DeclaredSize { get; } = new(
        "handrail-size",
        "Handrail that a hand closes around",
        "Only with guard.handrail: diameter of a round one against 1-1/4 to 2 in; of another what is around it (arrises not eased) against "
            + "4 to 6-1/4 in, and from corner to corner against 2-1/4 in; told is what misses most.",
        Limits.HandrailSource,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Its room.</summary>
    public static DeclaredCheck DeclaredClear { get; } = new(
        "handrail-clearance",
        "Room for the hand around the handrail",
        "Only with guard.handrail: least distance from it to rails, pickets, caps and posts, bay by bay at the frames, against 1-1/2 in. "
            + "The brackets that hold it are bought; they come from below.",
        Limits.HandrailClear.Source,
        [CheckStatus.Pass, CheckStatus.Warn]);

    /// <summary>Both; none without a handrail.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        if (context.Parameters.Guard.Handrail is { } handrail)
        {
            yield return Size(context, handrail);
            yield return Clear(context);
        }
    }

    private static CheckResult Size(CheckContext context, HandrailParameters handrail)
    {
        var words = context.Words();
        var worst = Measures(handrail.Section, handrail.IsRound).MaxBy(m => m.Ratio)!;
        var detail = $"{handrail.Section.Name}: {words.Length(worst.Had)} {worst.What}, "
            + (worst.Low > 0 ? $"{words.InInches(worst.Low)} to " : "at most ") + words.InInches(worst.High);
        var result = worst.IsHigh
            ? Outcome.AtMost(DeclaredSize, worst.Had, worst.High, "m", DeclaredSize.Source, detail, CheckStatus.Warn)
            : Outcome.AtLeast(DeclaredSize, worst.Had, worst.Low, "m", DeclaredSize.Source, detail, CheckStatus.Warn);
        return result.On(context.InBay(1, Role.Handrail));
    }

    private static Measure[] Measures(Section section, bool isRound)
    {
        var (least, most) = isRound ? Limits.HandrailDiameter : Limits.HandrailPerimeter;
        return isRound
            ? [new("across", section.Width, least, most)]
            :
            [
                new("around", 2 * (section.Width + section.Thickness), least, most),
                new(
                    "from corner to corner",
                    Math.Sqrt((section.Width * section.Width) + (section.Thickness * section.Thickness)), 0, Limits.HandrailAcross),
            ];
    }

    private static CheckResult Clear(CheckContext context)
    {
        var words = context.Words();
        var (needed, source) = Limits.HandrailClear;
        var least = Quantities.Ties.FirstLeast(context.Bays.SelectMany(bay => InBay(context.Layout, bay)), c => c.Clear)!;
        return Outcome.AtLeast(
            DeclaredClear, least.Clear, needed, "m", source,
            $"least in {least.Handrail.Owner}, to {least.What}: {words.Length(least.Clear)}, needed {words.InInches(needed)}",
            CheckStatus.Warn).On(CheckParts.OnBothSides(least.Handrail.Id));
    }

    private static IEnumerable<Room> InBay(BridgeLayout layout, int bay)
    {
        var handrail = GuardHandrails.Lay(layout, bay, Side.Right).Single();
        Member[] others = [.. GuardRails.Lay(layout, bay, Side.Right), GuardCaps.Lay(layout, bay, Side.Right)];
        foreach (var frame in (int[])[bay - 1, bay])
        {
            var across = Plane.Through(layout.Poses[frame].Node, handrail.Placement.X);
            foreach (var other in others)
            {
                yield return new(handrail, CrossSections.Clear(handrail, other, across), other.Name);
            }

            yield return new(handrail, ToPost(layout, handrail, frame), "what stands on the post of " + layout.Poses[frame].Name);
        }
    }

    /// <summary>To the plane of the posts' inner faces, less what stands on these, metres.</summary>
    private static double ToPost(BridgeLayout layout, Member handrail, int frame)
    {
        var face = PostFace.Lay(layout, frame, Side.Right, 0);
        var across = Plane.Through(layout.Poses[frame].Node, layout.Poses[frame].Along);
        var middle = handrail.Placement.Origin;
        middle += across.LineParameter(middle, handrail.Placement.X) * handrail.Placement.X;
        var nearest = handrail.Shape.IsRound
            ? face.Inward.Dot(middle - face.Point) - (handrail.Shape.Width / 2)
            : face.Inward.Dot(CrossSections.Furthest(handrail, across, -face.Inward) - face.Point);
        return nearest - GuardPickets.Behind(layout.Parameters.Guard);
    }

    private sealed record Room(Member Handrail, double Clear, string What);

    /// <summary>A measure in metres and its range; a least of 0 is none.</summary>
    private sealed record Measure(string What, double Had, double Low, double High)
    {
        public bool IsHigh => Had / High >= Low / Had;

        public double Ratio => Math.Max(Had / High, Low / Had);
    }
}
