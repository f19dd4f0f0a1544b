using System.Collections.Immutable;

namespace BridgeForm.Roles;

/// <summary>
/// Every plain fact of every role, once: whoever writes, counts, weighs or draws parts asks here. Order: as a bridge is built,
/// frames before bays, what carries before what it carries. Words and joints are common practice, no source.
/// </summary>
public static class RoleTable
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<RoleFacts> All { get; } =
    [
        new()
        {
            Role = Role.Base, Letter = "B", Name = "base", Words = "Beam across the ropes; the frame stands on it", Wood = WoodKey.Base,
            Joints = [new("keeper", "keeper strap to base, one strap a channel", JointCount.EachChannel)],
            RestsOn = [],
            AddedIn = [AssemblyWork.BuildFrame], Rank = 0,
            Axis = RoleAxis.Across, Faces = new("face towards A", "towards B", "up"), FlatFaces = FaceWords.FlatAcross,
            TakesHoles = true, Share = WeightShare.Base, Section = DrawingSection.Frame, Leaves = new(0, -0.3, 0),
            Building = BuildingPart.Beam,
        },
        new()
        {
            Role = Role.Post, Letter = "P", Name = "post", Words = "Upright that holds the rails", Wood = WoodKey.Post,
            Joints = [new("post-foot", "post to base", JointCount.Each)],
            RestsOn = [Bearing.InFrame(Role.Base)],
            AddedIn = [AssemblyWork.BuildFrame], Rank = 1,
            Axis = RoleAxis.Up, Faces = new("face towards B", "towards A", "to the right"),
            TakesHoles = true, Share = WeightShare.Guard, Section = DrawingSection.Frame, Leaves = new(0, 0.06, 0.28),
            Building = BuildingPart.Post,
        },
        new()
        {
            // A knee.
            Role = Role.Brace, Letter = "K", Name = "brace", Words = "Strut that keeps the post from leaning out", Wood = WoodKey.Brace,
            Joints = [new("brace-foot", "brace to base", JointCount.Each), new("brace-head", "brace to post", JointCount.Each)],
            RestsOn = [Bearing.InFrame(Role.Base), Bearing.InFrame(Role.Post)],
            AddedIn = [AssemblyWork.BuildFrame], Rank = 2,
            Axis = RoleAxis.Up, Faces = new("face towards B", "towards A", "to the right"),
            TakesHoles = true, Share = WeightShare.Brace, Section = DrawingSection.Frame, Leaves = new(0, -0.02, 0.62),
            Building = BuildingPart.Brace,
        },
        new()
        {
            // A wedge.
            Role = Role.Packer, Letter = "W", Name = "packer", Printed = "tapered shim",
            Words = "Thin wedge that fills the gap under a deck board",
            Wood = WoodKey.LikeBaseButTreated,
            Joints = [new("packer", "tapered shim to base", JointCount.Each)],
            RestsOn = [Bearing.InFrame(Role.Base)],
            AddedIn = [AssemblyWork.SetEndFrame, AssemblyWork.HangFrame], Rank = 2,
            Axis = RoleAxis.Across, Faces = FaceWords.FlatAcross,
            Share = WeightShare.Deck, Section = DrawingSection.Frame, Leaves = new(0.1, 0.06, 0),
            Building = BuildingPart.Member,
        },
        new()
        {
            // An underlay.
            Role = Role.Shim, Letter = "U", Name = "shim", Printed = "cap shim",
            Words = "Thin wedge on a post's head, under its cap",
            Wood = WoodKey.LikeBaseButTreated,
            Joints = [new("shim", "cap shim to post", JointCount.Each)],
            RestsOn = [Bearing.InFrame(Role.Post)],
            AddedIn = [AssemblyWork.BuildFrame], Rank = 3,
            Axis = RoleAxis.Across, Faces = FaceWords.FlatAcross,
            Share = WeightShare.Guard, Section = DrawingSection.Frame, Leaves = new(0.1, 0.3, 0.1),
            Building = BuildingPart.Member,
        },
        new()
        {
            // A deck board.
            Role = Role.Board, Letter = "D", Name = "board", Words = "Deck board you walk on", Wood = WoodKey.Board,
            Joints = [new("board-end", "deck board to base, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.AtBothEnds(Role.Base, Role.Packer)],
            AddedIn = [AssemblyWork.LayDeck], Rank = 2,
            Axis = RoleAxis.Along, Faces = FaceWords.FlatAlong,
            Share = WeightShare.Deck, Section = DrawingSection.Deck, Leaves = new(0.55, 0.1, 0),
            Building = BuildingPart.Plate,
        },
        new()
        {
            Role = Role.Stringer, Letter = "S", Name = "stringer", Words = "Bearer under the treads", Wood = WoodKey.Stringer,
            Joints = [new("stringer-end", "stringer to base, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.AtBothEnds(Role.Base, Role.Packer)],
            AddedIn = [AssemblyWork.LayDeck], Rank = 0,
            Axis = RoleAxis.Along, Faces = new("right face", "to the left", "up"),
            Share = WeightShare.Deck, Section = DrawingSection.Deck, Leaves = new(0.55, 0.05, 0),
            Building = BuildingPart.Joist,
        },
        new()
        {
            Role = Role.Tread, Letter = "T", Name = "tread", Words = "Deck board across the bridge", Wood = WoodKey.Board,
            Joints = [new("tread", "tread to stringer", JointCount.EachCarrier)],
            RestsOn = [Bearing.AcrossBay(Role.Stringer)],
            AddedIn = [AssemblyWork.LayDeck], Rank = 2,
            Axis = RoleAxis.Across, Faces = FaceWords.FlatAcross,
            Share = WeightShare.Deck, Section = DrawingSection.Deck, Leaves = new(0.55, 0.32, 0),
            Building = BuildingPart.Plate,
        },
        new()
        {
            Role = Role.Rail, Letter = "R", Name = "rail", Words = "Rail at the side, between the posts", Wood = WoodKey.Rail,
            Joints = [new("rail", "rail to post, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.AtBothEnds(Role.Post)],
            AddedIn = [AssemblyWork.FixRails], Rank = 2,
            Axis = RoleAxis.Along, Faces = new("inward face", "outward", "up") { Mirrored = true },
            Share = WeightShare.Guard, Section = DrawingSection.Guard, Leaves = new(0.55, 0.12, 0.1),
            Building = BuildingPart.Member,
        },
        new()
        {
            Role = Role.Cap, Letter = "C", Name = "cap", Words = "Cap along the tops of the posts", Wood = WoodKey.Cap,
            Joints = [new("cap", "cap to post, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.AtBothEnds(Role.Post, Role.Shim)],
            AddedIn = [AssemblyWork.FixCaps], Rank = 2,
            Axis = RoleAxis.Along, Faces = FaceWords.FlatAlong,
            Share = WeightShare.Guard, Section = DrawingSection.Guard, Leaves = new(0.4, 0.5, 0.1),
            Building = BuildingPart.Member,
        },
        new()
        {
            // Upright: V.
            Role = Role.Picket, Letter = "V", Name = "picket", Words = "Upright stick between two rails", Wood = WoodKey.Picket,
            Joints = [new("picket", "picket to rail, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.AcrossBay(Role.Rail)],
            AddedIn = [AssemblyWork.FixRails], Rank = 3,
            Axis = RoleAxis.Up, Faces = new("inward face", "outward", "towards A") { Mirrored = true },
            Share = WeightShare.Guard, Section = DrawingSection.Guard, Leaves = new(0.55, 0.12, -0.05),
            Building = BuildingPart.Member,
        },
        new()
        {
            Role = Role.Handrail, Letter = "H", Name = "handrail", Words = "Rail for the hand, on brackets from the posts",
            Wood = WoodKey.Handrail,
            Joints = [new("handrail", "handrail to the bracket on the post, each end", JointCount.EachEnd)],
            RestsOn = [Bearing.OnBrackets(Role.Post)],
            AddedIn = [AssemblyWork.FixRails], Rank = 4,
            Axis = RoleAxis.Along, Faces = new("inward face", "outward", "up") { Mirrored = true },
            Share = WeightShare.Guard, Section = DrawingSection.Guard, Leaves = new(0.55, 0.3, -0.15),
            Building = BuildingPart.Member,
        },
        new()
        {
            // Grip.
            Role = Role.Cleat, Letter = "G", Name = "cleat", Words = "Strip across the deck for shoes to hold on", Wood = WoodKey.Cleat,
            Joints = [new("cleat", "cleat to the boards or treads under it", JointCount.Each)],
            RestsOn = [new(BearingPlace.Frame, [Role.Board, Role.Tread])], LiesOnTop = true,
            AddedIn = [AssemblyWork.LayDeck], Rank = 3,
            Axis = RoleAxis.Across, Faces = FaceWords.FlatAcross,
            Share = WeightShare.Deck, Section = DrawingSection.Deck, Leaves = new(0.55, 0.4, 0),
            Building = BuildingPart.Member,
        },
        new()
        {
            Role = Role.Newel, Letter = "N", Name = "newel", Words = "Post on the landing, at which the guard ends", Wood = WoodKey.Newel,
            Joints = [new("newel", "newel to the landing, by its builder", JointCount.Each)],
            RestsOn = [], StandsOnLanding = true,
            AddedIn = [AssemblyWork.SetEndFrame], Rank = 5,
            Axis = RoleAxis.Up, Faces = new("face towards B", "towards A", "to the right"),
            Share = WeightShare.Guard, Section = DrawingSection.Guard, Leaves = new(0, 0.06, 0.45),
            Building = BuildingPart.Post,
        },
    ];

    private static readonly RoleFacts[] s_byRole = [.. All.OrderBy(f => f.Role)];

    private static readonly ImmutableArray<ImmutableArray<Role>> s_under = [.. Enum.GetValues<DrawingSection>().Select(FindUnder)];

    /// <summary>Names of joints under <c>fasteners</c> in the project file; a bridge has those that its parts make.</summary>
    public static ImmutableArray<string> JointNames { get; } = [.. All.SelectMany(f => f.Joints).Select(j => j.Name)];

    /// <summary>The facts of a role.</summary>
    public static RoleFacts Of(Role role) => s_byRole[(int)role];

    /// <summary>Whether a role carries parts of a section, or what carries these.</summary>
    public static bool IsUnder(Role role, DrawingSection section) => s_under[(int)section].Contains(role);

    private static ImmutableArray<Role> FindUnder(DrawingSection section)
    {
        var found = new HashSet<Role>();
        var next = new Queue<RoleFacts>(All.Where(f => f.Section == section && !f.LiesOnTop));
        while (next.TryDequeue(out var facts))
        {
            foreach (var role in facts.RestsOn.SelectMany(b => b.On).Where(found.Add))
            {
                next.Enqueue(Of(role));
            }
        }

        return [.. found];
    }
}
