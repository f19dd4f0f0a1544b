using System.Collections.Immutable;
using BridgeForm.Pieces;
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
    public static ImmutableArray<Joint> Count(ImmutableArray<Piece> pieces) =>
    [
        .. RoleTable.All
            .SelectMany(f => f.Joints.Select(j => new Joint(j.Name, j.What, Count(j.Count, f, pieces))))
            .Where(j => j.Count > 0),
    ];

    private static int Count(JointCount count, RoleFacts facts, ImmutableArray<Piece> pieces)
    {
        var own = pieces.Where(p => p.Role == facts.Role);
        var parts = own.Sum(p => p.Occurrences.Length);
        return count switch
        {
            JointCount.Each => parts,
            JointCount.EachEnd => TwoEnds * parts,
            JointCount.EachCarrier => parts == 0 ? 0 : parts * facts.RestsOn.SelectMany(b => b.On).Sum(role => InOneBay(role, pieces)),
            JointCount.EachChannel => own.Sum(p => p.Shape.Channels.Length * p.Occurrences.Length),
            _ => throw new ArgumentOutOfRangeException(nameof(count), count, "No such count."),
        };
    }

    /// <summary>Every bay has as many carriers of a role as the first.</summary>
    private static int InOneBay(Role role, ImmutableArray<Piece> pieces)
    {
        var owners = pieces.Where(p => p.Role == role).SelectMany(p => p.Occurrences).Select(o => PartId.OwnerOf(o.Id)).ToList();
        return owners.Count == 0 ? 0 : owners.Count(o => string.Equals(o, owners[0], StringComparison.Ordinal));
    }
}
