using BridgeForm.Connections;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Joints that cannot be made, or that no table of distances lets count: each with the nearest size that fits. What holds a joint of
/// plates against its neighbours stands in <see cref="JointClashes"/>.
/// </summary>
internal static class JointRules
{
    public static void Check(CheckedFile f)
    {
        foreach (var joint in f.Parameters.Frames.Joints)
        {
            var path = JointSection.PathOf(joint.Place);
            if (!f.Good(
                path, path + ".kind", path + ".bolt", path + ".count", path + ".spacing", path + ".end", path + ".carrier",
                path + ".carrier.count", path + ".carrier.spacing", path + ".carrier.depth", path + ".carrier.shift", path + ".plate",
                path + ".plate.thickness", path + ".plate.width", path + ".plate.length", path + ".capacity",
                "frames.base.section", "frames.base.length", "frames.base.flat", "frames.post.section", "frames.post.length",
                "frames.post.lean", "frames.post.foot", "frames.brace.section", "frames.brace.lean", "frames.brace.foot",
                "frames.brace.length"))
            {
                continue;
            }

            Capacity(f, joint, path);
            if (joint.Plates is { } plates && f.Parameters.Frames.Brace.Length > 0)
            {
                Plates(f, joint.Place, plates, path);
            }
        }
    }

    private static void Capacity(CheckedFile f, JointParameters joint, string path)
    {
        var given = f.Values.Given(path + ".capacity");
        if (joint.Bracket is not null && !given)
        {
            f.Stop(FaultCode.JointCapacity, path + ".kind", $"{joint.Name}: a bracket needs its maker's figures; write capacity: "
                + "{ uplift: 1500 lbf, shear: 900 lbf, source: maker's sheet } beside kind, or leave kind out for plates");
        }
        else if (joint.Bracket is null && given)
        {
            f.Stop(FaultCode.JointCapacity, path + ".capacity", $"{joint.Name}: capacity is what a bracket's maker declares, and plates "
                + "are reckoned; write kind: bracket, or leave capacity out");
        }
    }

    private static void Plates(CheckedFile f, JointPlace place, PlateJoint plates, string path)
    {
        var sticks = JointSticks.Of(f.Parameters.Frames, place);
        if (BoltSizes.Find(plates.Bolt) is null)
        {
            f.Stop(FaultCode.JointBolt, path + ".bolt", $"bolt: no bolt of '{f.Written(path + ".bolt")}' is on sale; the nearest is "
                + f.Size(BoltSizes.Nearest(plates.Bolt, f.Parameters.Units).Diameter));
            return;
        }

        if (Math.Abs(sticks.Strut.Thickness - sticks.Carrier.Thickness) > Tolerances.Seating)
        {
            f.Stop(FaultCode.JointThickness, path, $"{JointSection.NameOf(place)}: plates on both faces need members of one thickness; the "
                + $"{sticks.Strut.Name} has {f.Size(sticks.Strut.Thickness)} along the bridge and the {sticks.Carrier.Name} "
                + $"{f.Size(sticks.Carrier.Thickness)}: choose sections of {f.Size(sticks.Carrier.Thickness)}, or kind: bracket",
                $"frames.{sticks.Strut.Name}.section");
            return;
        }

        if (Bolts(f, sticks, plates, path))
        {
            JointClashes.Check(f, place, plates, path);
        }
    }

    /// <summary>Distances of the bolts among themselves and in the wood; true where all hold.</summary>
    private static bool Bolts(CheckedFile f, JointSticks sticks, PlateJoint plates, string path)
    {
        var d = plates.Bolt;
        var apart = Math.Max(
            DowelDistances.LeastSpacing * d, DowelDistances.BetweenRowsAcross(d, sticks.Carrier.Thickness));
        var (edge, end) = (DowelDistances.LoadedEdge * d, DowelDistances.LeastEnd * d);
        var deepest = sticks.Carrier.Width - (sticks.CarrierIsPost ? edge : DowelDistances.IdleEdge * d);
        var holds = true;
        void Stop(bool isWrong, string key, string message)
        {
            if (holds && isWrong)
            {
                holds = false;
                f.Stop(FaultCode.JointDistance, path + key, message, path + ".bolt");
            }
        }

        Stop(
            Below(sticks.Strut.Width / 2, edge), ".bolt", $"bolt: {f.Size(d)} wants {f.Size(edge)} of wood, 4 diameters, to either edge of "
                + $"the {sticks.Strut.Name}, and its axis has {f.Size(sticks.Strut.Width / 2)}; "
                + AtMost(f, sticks.Strut.Width / 2 / DowelDistances.LoadedEdge));
        Stop(Below(plates.Strut.Spacing, apart), ".spacing", $"spacing: write at least {f.AtLeast(apart)} between bolts of {f.Size(d)}");
        Stop(Below(plates.Carrier.Spacing, apart), ".carrier.spacing",
            $"spacing: write at least {f.AtLeast(apart)} between bolts of {f.Size(d)}");
        Stop(Below(plates.End, end), ".end", $"end: a bolt of {f.Size(d)} needs at least {f.AtLeast(end)}, 3.5 diameters, to the "
            + $"{sticks.Strut.Name}'s cut; its full value asks for {f.AtLeast(DowelDistances.FullEnd * d)}");
        Stop(Below(deepest, edge), ".bolt", $"bolt: {f.Size(d)} finds no place in the {sticks.Carrier.Name}, "
            + $"{f.Size(sticks.Carrier.Width)} deep; "
            + AtMost(
                f,
                sticks.Carrier.Width
                    / (DowelDistances.LoadedEdge + (sticks.CarrierIsPost ? DowelDistances.LoadedEdge : DowelDistances.IdleEdge))));
        Stop(Below(plates.Depth, edge) || plates.Depth > deepest * (1 + Tolerances.SameLimit), ".carrier.depth",
            $"depth: bolts of {f.Size(d)} lie {f.AtLeast(edge)} to {f.AtMost(deepest)} from the face that the {sticks.Strut.Name} ends on");
        return holds;
    }

    private static string AtMost(CheckedFile f, double diameter) => BoltSizes.Largest(diameter, f.Parameters.Units) is { } size
        ? $"write at most {f.Size(size.Diameter)}"
        : "no bolt on sale is so thin: use a deeper section, or kind: bracket";

    private static bool Below(double had, double least) => had < least * (1 - Tolerances.SameLimit);
}

/// <summary>A member as a joint meets it. Metres.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Width">In the plane of the frame.</param>
/// <param name="Thickness">Along the bridge.</param>
internal sealed record JointStick(string Name, double Width, double Thickness);

/// <summary>The two members of a joint.</summary>
/// <param name="Strut">The one that ends in it.</param>
/// <param name="Carrier">The one it ends on.</param>
/// <param name="CarrierIsPost">Both edges of it may be pressed.</param>
internal sealed record JointSticks(JointStick Strut, JointStick Carrier, bool CarrierIsPost)
{
    public static JointSticks Of(FrameParameters frames, JointPlace place)
    {
        var post = new JointStick("post", frames.Post.Section.Width, frames.Post.Section.Thickness);
        var brace = new JointStick("brace", frames.Brace.Section.Width, frames.Brace.Section.Thickness);
        var cross = new JointStick("base", frames.Base.Depth, frames.Base.Along);
        return place switch
        {
            JointPlace.PostFoot => new(post, cross, CarrierIsPost: false),
            JointPlace.BraceFoot => new(brace, cross, CarrierIsPost: false),
            _ => new(brace, post, CarrierIsPost: true),
        };
    }
}
