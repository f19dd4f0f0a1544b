using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>A place of a post that is looked at: where the brace meets it, or a hole.</summary>
/// <param name="From">n where the hole begins, metres; null for the whole section where the brace meets the post.</param>
/// <param name="To">n where it ends.</param>
/// <param name="Section">What is left there.</param>
internal sealed record PostPlace(double? From, double To, DrilledSection Section)
{
    /// <summary>
    /// The whole section first, then every hole. Holes are those of a post in the middle of the bridge; heads of upright
    /// frames are cut a few millimetres otherwise.
    /// </summary>
    public static ImmutableArray<PostPlace> Sections(CheckContext context)
    {
        var post = context.Parameters.Frames.Post;
        var whole = GuardPost.Bends(post);
        var holes = DrilledHole.Of(Uprights.Post(context.Layout, context.Layout.Bays / 2, Side.Right).Shape, flat: false);
        var cos = Math.Cos(post.Lean);
        return
        [
            new(null, 0, new(whole, [])),
            .. holes.Select(hole => new PostPlace(
                hole.From * cos, hole.To * cos, new(whole, [.. holes.Where(h => h.CountsWith(hole)).Select(h => h.Void)]))),
        ];
    }

    /// <summary>Largest bending there, N·m.</summary>
    public double Moment(GuardFrame frame, double push) =>
        From is { } from ? frame.PostMoment(push, from, To) : frame.PostMoment(push);

    /// <summary>The moment with its lever, and what is left of the section.</summary>
    public string Text(CheckWords words, GuardFrame frame, double push)
    {
        var moment = Moment(frame, push);
        var lever = moment / Math.Abs(push);
        var product = $"M = {words.Pounds(Math.Abs(push))} × {words.Length(lever)} = {words.Moment(moment)}";
        if (From is not { } from)
        {
            return product;
        }

        var how = from > frame.Contact || (from <= frame.Contact && frame.Contact <= To)
            ? "below the top"
            : $"= (top − {words.Length(frame.Axes)}) × {words.Length(To)} / {words.Length(frame.Axes)}, axes meeting at {words.Length(frame.Axes)}";
        return $"at the hole from {words.Length(from)} to {words.Length(To)}: {product}, lever {how}; {Section.ModulusText(words, "the inner face")}";
    }
}
