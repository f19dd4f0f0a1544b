using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Where a brace's outer face lies against its post: foot on the base's top, long edge, and the height at which it meets
/// the post. Metres, in the plane of the frame.
/// </summary>
/// <param name="Foot">From the middle of the base to the brace's outer face at the base's top.</param>
/// <param name="LongEdge">Long point to long point.</param>
/// <param name="MeetsAt">n_o: height above the base's top where the outer edge meets the post's outer face.</param>
public readonly record struct BraceGeometry(double Foot, double LongEdge, double MeetsAt)
{
    /// <summary>From the foot: n_o = (foot − foot_post − D_post / cosα) / (tanα + tanβ); infinite when both stand upright.</summary>
    public static BraceGeometry FromFoot(PostParameters post, double lean, double foot)
    {
        var height = (foot - PostOuterFoot(post)) / (Elementary.Tan(post.Lean) + Elementary.Tan(lean));
        return new(foot, height / Elementary.Cos(lean), height);
    }

    /// <summary>From the long edge, the same relation turned round.</summary>
    public static BraceGeometry FromLength(PostParameters post, double lean, double length)
    {
        var height = length * Elementary.Cos(lean);
        return new(PostOuterFoot(post) + (height * (Elementary.Tan(post.Lean) + Elementary.Tan(lean))), length, height);
    }

    /// <summary>From the middle of the base to the post's outer face at the base's top.</summary>
    public static double PostOuterFoot(PostParameters post) => post.Foot + (post.Section.Width / Elementary.Cos(post.Lean));

    /// <summary>Short edge of a brace of that section: long edge − D·(tanβ + cot(α + β)).</summary>
    public static double ShortEdge(PostParameters post, BraceParameters brace) =>
        brace.Length - (brace.Section.Width * (Elementary.Tan(brace.Lean) + (1 / Elementary.Tan(post.Lean + brace.Lean))));
}
