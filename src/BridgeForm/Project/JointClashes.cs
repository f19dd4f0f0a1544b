using BridgeForm.Connections;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Plates and bolts keep clear of boards, rails, caps, rope channels, keeper holes, ends and each other. Seen square to the frame:
/// both faces are alike, and left is the mirror image of right.
/// </summary>
internal static class JointClashes
{
    public static void Check(CheckedFile f, JointPlace place, PlateJoint plates, string path)
    {
        var layout = PlateLayout.Build(f.Parameters.Frames, place, plates);
        if (IsLarge(f, layout, path))
        {
            Ends(f, layout, path);
            Base(f, layout, path);
            Guard(f, layout, path);
            Rope(f, layout, path);
            Others(f, layout, path);
        }
    }

    /// <summary>Whether the plate holds its bolts.</summary>
    private static bool IsLarge(CheckedFile f, PlateLayout layout, string path)
    {
        var (length, width) = layout.Needed;
        if (layout.Plates.Length < length - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointDistance, path + ".plate.length",
                $"length: the plate's bolts ask for at least {f.AtLeast(length)}, 1.5 diameters from each to its ends");
            return false;
        }

        if (layout.Plates.Width < width - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointDistance, path + ".plate.width",
                $"width: the plate's bolts ask for at least {f.AtLeast(width)}, 1.5 diameters from each to its edges");
            return false;
        }

        return true;
    }

    /// <summary>Bolts near the far end of the strut, and near the ends of the carrier.</summary>
    private static void Ends(CheckedFile f, PlateLayout layout, string path)
    {
        var frames = f.Parameters.Frames;
        var strut = layout.Place == JointPlace.PostFoot ? frames.Post.Length : BraceAxis(frames);
        var near = layout.Strut.Min(layout.FromCut);
        var least = DowelDistances.LeastEnd * layout.Plates.Strut.Bolt;
        if (near < least - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointDistance, path + ".end", $"end: the line of bolts on the side where the slanting cut is nearest has "
                + $"{f.Size(near)} to it and needs {f.Size(least)}, 3.5 diameters; write at least "
                + f.AtLeast(layout.Plates.End + least - near), path + ".apart", path + ".lines");
        }
        else if (JointSection.CutSine(frames, layout.Place) is var sine && JointSection.IsEdge(sine))
        {
            // The head of a brace is a long taper: what pulls it off the post pulls across its grain towards the cut.
            least = DowelDistances.LoadedEdge * layout.Plates.Strut.Bolt;
            var square = near * sine;
            if (square < least - Tolerances.RoundOff)
            {
                f.Stop(FaultCode.JointDistance, path + ".end", $"end: the first bolt has {f.Size(square)} square to the slanting cut, an "
                    + $"edge towards which it pulls, and needs {f.Size(least)}, 4 diameters; write at least "
                    + f.AtLeast(layout.Plates.End + ((least - square) / sine)), path + ".bolt", path + ".apart");
            }
        }

        var reach = layout.Strut.Max(layout.FromCut);
        if (reach + least > strut + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointDistance, path + ".count",
                $"count: {layout.Plates.Strut.Count} bolts reach {f.Size(reach)} along a stick "
                + $"{f.Length(strut)} long, and need {f.Size(least)} more; write fewer, or less spacing", path + ".bolt");
        }

        least = DowelDistances.LeastEnd * layout.Plates.Carrier.Bolt;
        if (layout.Place != JointPlace.BraceHead)
        {
            var room = (frames.Base.Length / 2) - layout.Carrier[^1].Z;
            if (room < least - Tolerances.RoundOff)
            {
                f.Stop(FaultCode.JointDistance, path + ".carrier.shift",
                    $"the outermost bolt in the base is {f.Size(room)} from its end and needs {f.Size(least)}, 3.5 diameters; shift the "
                    + $"row inward by at least {f.AtLeast(least - room)}, or write a base at least "
                    + $"{f.LongAtLeast(frames.Base.Length + (2 * (least - room)))} long", path);
            }

            return;
        }

        var foot = PlateLayout.Build(frames, JointPlace.PostFoot, layout.Plates);
        var (low, high) = (layout.Carrier.Min(foot.FromCut), layout.Carrier.Max(foot.FromCut));
        var wanting = Math.Max(least - low, high + least - frames.Post.Length);
        if (wanting > Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointDistance, path + ".carrier.shift", $"the bolts in the post stand {f.Size(wanting)} too near its "
                + $"{(low < least ? "foot: shift the row upward" : "head: shift the row downward")} by at least "
                + f.AtLeast(wanting), path);
        }
    }

    private static double BraceAxis(FrameParameters frames) =>
        (frames.Brace.Length + BraceGeometry.ShortEdge(frames.Post, frames.Brace)) / 2;

    /// <summary>The plate stays on the base.</summary>
    private static void Base(CheckedFile f, PlateLayout layout, string path)
    {
        var frames = f.Parameters.Frames;
        if (layout.Place == JointPlace.BraceHead)
        {
            var low = layout.Corners.Min(p => p.N);
            if (low < -Tolerances.RoundOff)
            {
                f.Stop(FaultCode.JointClash, path + ".plate.length", $"the plate reaches {f.Size(-low)} below the base's top, which its "
                    + "faces do not join; shift the bolts upward, or write a shorter plate", path);
            }

            return;
        }

        var over = layout.Corners.Max(p => p.Z) - (frames.Base.Length / 2);
        if (over > Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointClash, path + ".plate.width", $"the plate reaches {f.Size(over)} out over the base's end; shift bolts "
                + $"inward by at least {f.AtLeast(over)}, or write a base at least {f.LongAtLeast(frames.Base.Length + (2 * over))} long",
                path);
        }

        var below = -frames.Base.Depth - layout.Corners.Min(p => p.N);
        if (below > Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointClash, path + ".plate.length", $"the plate reaches {f.Size(below)} below the base; write a depth at "
                + $"most {f.AtMost(layout.Plates.Depth - below)}, or a shorter plate", path + ".carrier.depth", path);
        }
    }

    /// <summary>Inward of the post's inner face lie boards and rails, above its head the cap.</summary>
    private static void Guard(CheckedFile f, PlateLayout layout, string path)
    {
        var post = f.Parameters.Frames.Post;
        var foot = PlateLayout.Build(f.Parameters.Frames, JointPlace.PostFoot, layout.Plates);
        var upper = PlaneOutline.Above(layout.Corners, 0);
        if (upper.IsEmpty)
        {
            return;
        }

        var inward = upper.Max(p => p.From(foot.Meets, foot.Across)) - (post.Section.Width / 2);
        if (inward > Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointClash, path + ".plate.width", $"the plate reaches {f.Size(inward)} inward over the post's inner face, "
                + $"where boards and rails lie; write a width at most {f.AtMost(layout.Plates.Width - (2 * inward))}, or shift bolts "
                + "outward", path);
        }

        var above = upper.Max(p => p.From(foot.Meets, foot.Along)) - post.Length + (post.Section.Width / 2 * Elementary.Tan(post.Lean));
        if (above > Tolerances.RoundOff)
        {
            f.Stop(FaultCode.JointClash, path + ".plate.length", $"the plate reaches {f.Size(above)} too near the cap on the post's head; "
                + "shift the bolts downward, or write a shorter plate", path);
        }
    }

    /// <summary>Ropes pass below the plate, keepers beside the bolts.</summary>
    private static void Rope(CheckedFile f, PlateLayout layout, string path)
    {
        var frames = f.Parameters.Frames;
        if (layout.Place == JointPlace.BraceHead || !f.Good("ropes.spacing", "ropes.type", "frames.channel", "frames.keeper"))
        {
            return;
        }

        var (rope, bottom) = (f.Parameters.Ropes.Spacing / 2, -frames.Base.Depth);
        var half = frames.Channel.Width / 2;
        var floor = bottom + Math.Max(frames.Channel.Depth, frames.Channel.EndDepth);
        var channel = PlaneOutline.Box(rope - half, rope + half, bottom, floor);
        if (PlaneOutline.Overlap(layout.Corners, channel, Tolerances.RoundOff))
        {
            f.Stop(FaultCode.JointClash, path + ".carrier.depth", $"the plate lies over the rope's channel, {f.Size(rope - half)} to "
                + $"{f.Size(rope + half)} from the middle and {f.Size(floor - bottom)} deep; shift its bolts away, or write a depth "
                + "at most " + f.AtMost(layout.Plates.Depth - (floor - layout.Corners.Min(p => p.N))), path + ".carrier.shift", path);
        }

        var (keeper, radius) = (frames.Keeper, layout.Plates.Carrier.Hole / 2);
        var least = Math.Max(radius, DowelDistances.IdleEdge * layout.Plates.Carrier.Bolt);
        foreach (var at in keeper.Hole > 0 ? (double[])[rope - (keeper.Spread / 2), rope + (keeper.Spread / 2)] : [])
        {
            var near = layout.Carrier.Min(
                p => PlaneOutline.ToBox(p, at - (keeper.Hole / 2), at + (keeper.Hole / 2), bottom, bottom + keeper.Depth));
            if (near < least - Tolerances.RoundOff)
            {
                var how = near < radius - Tolerances.RoundOff ? "meets" : $"leaves {f.Size(near)}, less than 1.5 diameters, to";
                f.Stop(FaultCode.JointClash, path + ".carrier.shift", $"a bolt {how} the keeper's hole {f.Size(at)} from the middle; shift "
                    + $"the row by at least {f.AtLeast(least - near)}, or write a depth at most "
                    + f.AtMost(frames.Base.Depth - keeper.Depth - least - layout.Plates.Carrier.Half), path + ".carrier.depth", path);
            }
        }
    }

    /// <summary>Plates of an earlier joint on the same faces.</summary>
    private static void Others(CheckedFile f, PlateLayout layout, string path)
    {
        var frames = f.Parameters.Frames;
        foreach (var other in frames.Joints.TakeWhile(j => j.Place < layout.Place))
        {
            if (other.Plates is { } plates && f.Good(JointSection.PathOf(other.Place))
                && PlaneOutline.Overlap(
                    layout.Corners, PlateLayout.Build(frames, other.Place, plates).Corners, Tolerances.RoundOff))
            {
                f.Stop(FaultCode.JointClash, path, $"the plates of {JointSection.NameOf(layout.Place)} and {other.Name} lie on each other; "
                    + "write narrower or shorter ones, shift their bolts apart, or stand the brace further out");
            }
        }
    }
}
