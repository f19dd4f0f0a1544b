using System.Collections.Immutable;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Stocking;

/// <summary>A kind of joint and how many there are.</summary>
/// <param name="Name">As under <c>fasteners</c> in the project file: <c>post-foot</c>.</param>
/// <param name="What">In a person's words.</param>
/// <param name="Count">How many the bridge has.</param>
public sealed record Joint(string Name, string What, int Count);

/// <summary>Counts the joints of a bridge from its parts.</summary>
public static class Joints
{
    private const int TwoEnds = 2;

    /// <summary>All kinds that the bridge has, frames before bays.</summary>
    /// <param name="pieces">Pieces with their occurrences.</param>
    public static ImmutableArray<Joint> Of(ImmutableArray<Piece> pieces)
    {
        int Parts(Role role) => pieces.Where(p => p.Role == role).Sum(p => p.Occurrences.Length);
        var stringersABay = StringersABay(pieces);
        var channels = pieces.Where(p => p.Role == Role.Base).Sum(p => p.Shape.Channels.Length * p.Occurrences.Length);
        ImmutableArray<Joint> joints =
        [
            new(JointNames.Keeper, "keeper strap to base, one strap a channel", channels),
            new(JointNames.PostFoot, "post to base", Parts(Role.Post)),
            new(JointNames.BraceFoot, "brace to base", Parts(Role.Brace)),
            new(JointNames.BraceHead, "brace to post", Parts(Role.Brace)),
            new(JointNames.Packer, "packer to base", Parts(Role.Packer)),
            new(JointNames.BoardEnd, "deck board to base, each end", TwoEnds * Parts(Role.Board)),
            new(JointNames.StringerEnd, "stringer to base, each end", TwoEnds * Parts(Role.Stringer)),
            new(JointNames.Tread, "tread to stringer", stringersABay * Parts(Role.Tread)),
            new(JointNames.Rail, "rail to post, each end", TwoEnds * Parts(Role.Rail)),
            new(JointNames.Cap, "cap to post, each end", TwoEnds * Parts(Role.Cap)),
        ];
        return [.. joints.Where(j => j.Count > 0)];
    }

    /// <summary>Every bay has as many stringers as the first.</summary>
    private static int StringersABay(ImmutableArray<Piece> pieces)
    {
        static string Owner(string id) => id[..id.IndexOf('/', StringComparison.Ordinal)];
        var owners = pieces.Where(p => p.Role == Role.Stringer).SelectMany(p => p.Occurrences).Select(o => Owner(o.Id)).ToList();
        return owners.Count == 0 ? 0 : owners.Count(o => string.Equals(o, owners[0], StringComparison.Ordinal));
    }
}
