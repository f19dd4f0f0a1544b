using BridgeForm.Connections;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>
/// Joints that cannot be made, or that no table of distances lets count: each with the nearest size that fits. What holds a joint of
/// plates against its neighbours stands in <see cref="JointClashes"/>.
/// </summary>
internal static class JointRules
{
    /// <summary>Whether nothing is to be told of the plates of a bridge, no matter which file it is from.</summary>
    public static bool Fits(BridgeParameters parameters)
    {
        var faults = new FaultList();
        var plated = parameters.Frames with { Joints = [.. parameters.Frames.Joints.Where(j => j.Plates is not null)] };
        Check(new CheckedFile(new FileValues(parameters.Units), parameters with { Frames = plated }, faults));
        return !faults.Any;
    }

    public static void Check(CheckedFile f)
    {
        foreach (var joint in f.Parameters.Frames.Joints)
        {
            var path = JointSection.PathOf(joint.Place);
            if (!f.Good(
                path, path + ".kind", path + ".bolt", path + ".count", path + ".spacing", path + ".lines", path + ".apart", path + ".end",
                path + ".carrier", path + ".carrier.bolt", path + ".carrier.count", path + ".carrier.spacing", path + ".carrier.lines",
                path + ".carrier.apart", path + ".carrier.depth", path + ".carrier.shift", path + ".plate",
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
        foreach (var (pattern, key) in Patterns(plates, path))
        {
            if (BoltSizes.Find(pattern.Bolt) is null)
            {
                f.Stop(FaultCode.JointBolt, key + ".bolt", $"bolt: no bolt of '{f.Written(key + ".bolt")}' is on sale; the nearest is "
                    + f.Size(BoltSizes.Nearest(pattern.Bolt, f.Parameters.Units).Diameter));
                return;
            }
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

    private static (BoltPattern Pattern, string Path)[] Patterns(PlateJoint plates, string path) =>
        [(plates.Strut, path), (plates.Carrier, path + ".carrier")];

    /// <summary>Distances of the bolts among themselves and in the wood; true where all hold.</summary>
    private static bool Bolts(CheckedFile f, JointSticks sticks, PlateJoint plates, string path) =>
        Patterns(plates, path).All(p => Between(f, sticks, p.Pattern, p.Path, path))
        && InStrut(f, sticks.Strut, plates, path)
        && InCarrier(f, sticks, plates, path + ".carrier", path);

    private static bool Stop(CheckedFile f, bool isWrong, string path, string message, string other)
    {
        if (isWrong)
        {
            f.Stop(FaultCode.JointDistance, path, message, other);
        }

        return isWrong;
    }

    /// <summary>Bolts of one member from each other, along its grain and across it.</summary>
    private static bool Between(CheckedFile f, JointSticks sticks, BoltPattern pattern, string key, string path)
    {
        var d = pattern.Bolt;
        var along = Math.Max(DowelDistances.LeastSpacing * d, DowelDistances.BetweenRowsAcross(d, sticks.Carrier.Thickness));
        var across = DowelDistances.LeastSpacing * d;
        return !Stop(
                f, Below(pattern.Spacing, along), key + ".spacing",
                $"spacing: write at least {f.AtLeast(along)} between bolts of {f.Size(d)}", path + ".bolt")
            && !Stop(
                f, pattern.Lines > 1 && Below(pattern.Apart, across), key + ".apart",
                $"apart: two lines of bolts of {f.Size(d)} lie at least {f.AtLeast(across)}, 3 diameters, apart; where there is no room "
                    + "for that, write thinner bolts or lines: 1", key + ".lines")
            && !Stop(
                f, pattern.Apart > DowelDistances.WidestGroup * (1 + Tolerances.SameLimit), key + ".apart",
                $"apart: one plate ties bolts at most {f.AtMost(DowelDistances.WidestGroup)} apart across the grain, for the wood shrinks",
                path + ".bolt");
    }

    private static bool InStrut(CheckedFile f, JointStick strut, PlateJoint plates, string path)
    {
        var (d, half) = (plates.Strut.Bolt, strut.Width / 2);
        var (edge, end) = (DowelDistances.LoadedEdge * d, DowelDistances.LeastEnd * d);
        return !Stop(
                f, Below(half, edge), path + ".bolt", $"bolt: {f.Size(d)} wants {f.Size(edge)} of wood, 4 diameters, to either edge of the "
                    + $"{strut.Name}, and its axis has {f.Size(half)}; " + AtMost(f, half / DowelDistances.LoadedEdge), path)
            && !Stop(
                f, Below(half - plates.Strut.Half, edge), path + ".apart",
                $"apart: lines of {f.Size(d)} want {f.Size(edge)} of wood, 4 diameters, to either edge of the {strut.Name}, "
                    + $"{f.Size(2 * half)} wide; write at most {f.AtMost(2 * (half - edge))}, or lines: 1", path + ".lines")
            && !Stop(
                f, IsWide(plates.Strut, strut) && Below(half - plates.Strut.Half, plates.Strut.Apart / 2), path + ".apart",
                $"apart: bolts so thin want half the distance of two lines to either edge of the {strut.Name}; write at most "
                    + f.AtMost(half), path + ".lines")
            && !Stop(
                f, Below(plates.End, end), path + ".end", $"end: a bolt of {f.Size(d)} needs at least {f.AtLeast(end)}, 3.5 diameters, to "
                    + $"the {strut.Name}'s cut; its full value asks for {f.AtLeast(DowelDistances.FullEnd * d)}", path + ".bolt");
    }

    private static bool InCarrier(CheckedFile f, JointSticks sticks, PlateJoint plates, string key, string path)
    {
        var (d, half, carrier) = (plates.Carrier.Bolt, plates.Carrier.Half, sticks.Carrier);
        var edge = DowelDistances.LoadedEdge * d;
        var far = sticks.CarrierIsPost ? edge : DowelDistances.IdleEdge * d;
        var (least, most) = (edge + half, carrier.Width - far - half);
        return !Stop(
                f, Below(carrier.Width - far, edge), key + ".bolt", $"bolt: {f.Size(d)} finds no place in the {carrier.Name}, "
                    + $"{f.Size(carrier.Width)} deep; " + AtMost(f, carrier.Width / ((edge + far) / d)), path + ".bolt")
            && !Stop(
                f, Below(most, least), key + ".apart", $"apart: two lines of {f.Size(d)} find no place in the {carrier.Name}, "
                    + $"{f.Size(carrier.Width)} deep; write at most {f.AtMost(carrier.Width - edge - far)}, or lines: 1", key + ".lines")
            && !Stop(
                f, IsWide(plates.Carrier, carrier)
                    && Below(Math.Min(plates.Depth, carrier.Width - plates.Depth) - half, plates.Carrier.Apart / 2), key + ".apart",
                $"apart: bolts so thin want half the distance of two lines to either edge of the {carrier.Name}; write at most "
                    + f.AtMost(Math.Min(plates.Depth, carrier.Width - plates.Depth)), key + ".lines")
            && !Stop(
                f, Below(plates.Depth, least) || plates.Depth > most * (1 + Tolerances.SameLimit), key + ".depth",
                $"depth: bolts of {f.Size(d)} lie {f.AtLeast(least)} to {f.AtMost(most)} from the face that the "
                    + $"{sticks.Strut.Name} ends on",
                path + ".bolt");
    }

    // NDS 2018 Table 12.5.1C, pushed along the grain: l/D above 6 wants half the distance of lines.
    private static bool IsWide(BoltPattern bolts, JointStick stick) =>
        bolts.Lines > 1 && stick.Thickness > DowelDistances.SlenderFrom * bolts.Bolt * (1 + Tolerances.SameLimit);

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
