using System.Collections.Immutable;
using BridgeForm.Connections;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>A joint of deck or guard that screws hold from the side, or a bracket: never both.</summary>
/// <param name="Name">As under <c>joints</c>: <c>rail</c>.</param>
public sealed record HeldJoint(string Name)
{
    /// <summary>Its name among the joints that are counted: <c>board-end</c>.</summary>
    public string Counted => Name is "board" or "stringer" ? Name + "-end" : Name;

    /// <summary>Screws through the part into side grain of what carries it; null for a bracket.</summary>
    public ScrewSet? Screws { get; init; }

    /// <summary>A bracket by what its maker declares; null for screws.</summary>
    public BracketCapacity? Bracket { get; init; }
}

/// <summary>Screws of one joint.</summary>
/// <param name="Size">Their size.</param>
/// <param name="Length">Under the head, metres.</param>
/// <param name="Count">How many in one joint.</param>
public sealed record ScrewSet(ScrewSize Size, double Length, int Count);

/// <summary>Keys of joints that screws or brackets hold, under <c>joints</c>; how they are read, and whether screws have room.</summary>
internal static class HeldSection
{
    private const string Screwed = "screws";

    /// <summary>Where screws from the side find side grain.</summary>
    private static readonly ImmutableArray<string> s_screwed = ["rail", "board", "packer"];

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> Names { get; } = ["cap", "rail", "board", "stringer", "packer"];

    public static IEnumerable<KeySpec> Keys => Names.Select(Keyed);

    /// <summary>All that the file describes, in their order.</summary>
    public static ImmutableArray<HeldJoint> Read(FileValues v) => [.. Names.Where(n => v.Given(Path(n))).Select(n => Joint(v, n))];

    public static void Check(CheckedFile f)
    {
        foreach (var joint in f.Parameters.HeldJoints)
        {
            var path = Path(joint.Name);
            if (!f.Good(
                path, path + ".kind", path + ".screw", path + ".length", path + ".count", path + ".capacity", "fasteners",
                "frames.post.section", "frames.base.section", "frames.base.flat", "guard.rails.section", "deck.board.section"))
            {
                continue;
            }

            if (joint.Bracket is not null && f.Values.Text(path + ".kind") is Screwed)
            {
                f.Stop(FaultCode.ScrewRoom, path + ".kind", $"{joint.Name}: " + (joint.Name is "cap"
                    ? "screws down through a cap go into the post's end grain"
                    : "screws reach a stringer on its narrow side only aslant") + ", which never counts; write kind: bracket");
                continue;
            }

            var given = f.Values.Given(path + ".capacity");
            if (joint.Bracket is not null && !given)
            {
                f.Stop(FaultCode.JointCapacity, path, $"{joint.Name}: a bracket needs its maker's figures; write capacity: "
                    + "{ uplift: 400 lbf, shear: 300 lbf, source: maker's sheet }");
            }
            else if (joint.Bracket is null && given)
            {
                f.Stop(FaultCode.JointCapacity, path + ".capacity", $"{joint.Name}: capacity is what a bracket's maker declares, and "
                    + "screws are reckoned; write kind: bracket, or leave capacity out");
            }

            if (f.Parameters.Fasteners.ContainsKey(joint.Counted))
            {
                f.Stop(FaultCode.JointTwice, "fasteners." + joint.Counted, $"{joint.Counted}: {path} says what holds these joints already; "
                    + $"keep that, and leave fasteners.{joint.Counted} out", path);
            }

            if (joint.Screws is { } screws)
            {
                Room(f, joint.Name, screws, path);
            }
        }
    }

    /// <summary>What a screw goes through, and what holds its thread, metres: thickness, depth, and the width of the part.</summary>
    public static (double Through, double Into, double Wide) Place(BridgeParameters parameters, string name)
    {
        var (frames, guard, deck) = (parameters.Frames, parameters.Guard, parameters.Deck);
        return name switch
        {
            "rail" => (guard.Rail.Thickness, frames.Post.Section.Width, guard.Rail.Width),
            _ => (deck.Board.Thickness, frames.Base.Depth, deck.Board.Width),
        };
    }

    // Thin screws are not in the tables of distances: as far apart as four diameters, and as far from edges (common practice).
    private static void Room(CheckedFile f, string name, ScrewSet screws, string path)
    {
        var (through, into, wide) = Place(f.Parameters, name);
        var (d, penetrates) = (screws.Size.Diameter, screws.Length - through);
        if (name is not "packer" && penetrates < screws.Size.Least - Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ScrewRoom, path + ".length", $"length: {f.Size(screws.Length)} goes through {f.Size(through)} and "
                + $"{f.Size(Math.Max(0, penetrates))} into what holds it; {screws.Size.Words} need {f.Size(screws.Size.Least)} there: "
                + $"write at least {f.AtLeast(through + screws.Size.Least)}", path + ".screw");
        }
        else if (penetrates > into + Tolerances.RoundOff)
        {
            f.Stop(FaultCode.ScrewRoom, path + ".length", $"length: {f.Size(screws.Length)} comes out on the other side; write at most "
                + f.AtMost(through + into), path + ".screw");
        }

        var needed = (screws.Count + 1) * DowelDistances.LoadedEdge * d;
        if (name is not "packer" && needed > wide + Tolerances.RoundOff)
        {
            var most = Math.Max(1, (int)((wide + Tolerances.RoundOff) / (DowelDistances.LoadedEdge * d)) - 1);
            f.Stop(FaultCode.ScrewRoom, path + ".count", $"count: {screws.Words()} in a line across a part {f.Size(wide)} wide lie closer "
                + $"than 4 diameters to each other or to its edges; write at most {NumberText.By("0", most)}, or thinner screws",
                path + ".screw");
        }
    }

    private static string Words(this ScrewSet screws) => $"{NumberText.By("0", screws.Count)} × {screws.Size.Words}";

    private static string Path(string name) => "joints." + name;

    private static KeySpec Keyed(string name)
    {
        var isScrewed = s_screwed.Contains(name, StringComparer.Ordinal);
        return Define.OptionalMap(
            name,
            name switch
            {
                "rail" => "Joint of a rail's end and a post: screws through the rail into the post's face",
                "board" => "Joint of a board's end and a base: screws down through the board",
                "packer" => "What holds a tapered shim in place until the boards' screws go through it",
                "cap" => "Joint of a cap's end and a post, by brackets at the post's side: screws down into its head are in end grain, "
                    + "which never counts",
                _ => "Joint of a stringer's end and a base, by brackets: nothing reaches it from the side",
            },
            [
                isScrewed
                    ? Define.Choice("kind", "Screws, or a bracket by its maker's figures", Screwed, Screwed, JointSection.Bracket)
                    : Define.Choice("kind", "A bracket by its maker's figures", JointSection.Bracket, JointSection.Bracket, Screwed),
                .. isScrewed ? Screws : [],
                Define.OptionalMap(
                    "capacity",
                    "What the maker declares for all brackets of one joint together",
                    Define.Quantity(QuantityKind.Force, "uplift", "Off what carries it", "1 lbf", "100000 lbf").Needed("400 lbf", "1.8 kN"),
                    Define.Quantity(QuantityKind.Force, "shear", "Along what carries it", "1 lbf", "100000 lbf")
                        .Needed("300 lbf", "1.3 kN"),
                    Define.Text("source", "Who declares it").Needed("maker's sheet of 2024")),
            ]);
    }

    private static IEnumerable<KeySpec> Screws =>
    [
        Define.Choice(
            "screw", "Their size: wood screws by number or millimeters, lag screws", "no10", [.. ScrewSizes.All.Select(s => s.Name)]),
        Define.Length("length", "Under the head", "1 in", "12 in", "3 in", "80 mm"),
        Define.Whole("count", "How many in a joint, in a line across the part", "1", "8", "2"),
    ];

    private static HeldJoint Joint(FileValues v, string name)
    {
        var path = Path(name);
        return v.Text(path + ".kind") is JointSection.Bracket || !s_screwed.Contains(name, StringComparer.Ordinal)
            ? new HeldJoint(name) { Bracket = JointSection.Capacity(v, path + ".capacity") }
            : new HeldJoint(name)
            {
                Screws = new ScrewSet(
                    ScrewSizes.Named(v.Text(path + ".screw")), v.Number(path + ".length"), v.Whole(path + ".count")),
            };
    }
}
