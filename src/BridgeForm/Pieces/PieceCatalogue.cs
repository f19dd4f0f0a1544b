using System.Runtime.InteropServices;
using BridgeForm.Frames;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>
/// Pieces found so far, while members are taken in order. A member joins the first piece whose first part agrees with it at
/// every corner; candidates are found by a grid over invariants of the shape, so that the work a member is constant.
/// </summary>
internal sealed class PieceCatalogue(double tolerance)
{
    private readonly List<PieceDraft> _drafts = [];
    private readonly Dictionary<Cell, List<int>> _grid = [];
    private readonly Dictionary<(Role Role, string Stock, string Section, int Points), int> _kinds = [];
    private readonly MarkNumbers _numbers = new();

    /// <summary>Pieces in order of their first part.</summary>
    public IReadOnlyList<PieceDraft> Drafts => _drafts;

    /// <summary>Takes the next member.</summary>
    /// <param name="member">The member as laid out.</param>
    /// <param name="wood">Corners of its undrilled solid; null for a plain prism.</param>
    public void Add(Member member, IReadOnlyList<Vector3d>? wood)
    {
        var corners = Corners.Find(member.Shape, wood);
        var turns = Symmetries.List(member.Shape, tolerance);
        if (FindFirst(member, corners, turns, mirrored: false) is { } same)
        {
            same.Draft.Add(member, corners, same.Turn);
            return;
        }

        Found(member, corners, turns);
    }

    private void Found(Member member, Corners corners, ReadOnlySpan<Placement> turns)
    {
        var isItsOwnMirror = corners.TurnOnto(corners, turns, tolerance, mirrored: true) is not null;
        var name = isItsOwnMirror ? _numbers.WithoutHand(member.Role)
            : FindFirst(member, corners, turns, mirrored: true) is { } twin && _numbers.TryOtherHand(twin.Draft.Name, out var other) ? other
            : _numbers.WithHand(member.Role, member.Side);
        var draft = new PieceDraft(member, corners, name);
        draft.Add(member, corners, Placement.Identity);
        CellsOf(member, corners).Own(_grid).Add(_drafts.Count);
        _drafts.Add(draft);
    }

    private (PieceDraft Draft, Placement Turn)? FindFirst(
        Member member, Corners corners, ReadOnlySpan<Placement> turns, bool mirrored)
    {
        var best = int.MaxValue;
        Placement bestTurn = default;
        foreach (var candidates in CellsOf(member, corners).Around(_grid))
        {
            foreach (var index in candidates)
            {
                // Indices grow along each list: nothing after a worse one is better.
                if (index >= best)
                {
                    break;
                }

                if (mirrored && !_numbers.HasOtherHand(_drafts[index].Name))
                {
                    continue;
                }

                if (corners.TurnOnto(_drafts[index].Corners, turns, tolerance, mirrored) is { } turn)
                {
                    best = index;
                    bestTurn = turn;
                    break;
                }
            }
        }

        return best == int.MaxValue ? null : (_drafts[best], bestTurn);
    }

    /// <summary>Cells are as wide as two agreeing parts can differ, so that these lie in the same or in neighbouring cells.</summary>
    private Cell CellsOf(Member member, Corners corners) => new(
        KindOf(member, corners),
        (long)Math.Floor(corners.Length / (2 * tolerance)),
        (long)Math.Floor(corners.ShapeSum / corners.ShapeSumSlack(tolerance)));

    // Members that can agree at all, by number: names are hashed once a member and not once a cell.
    private int KindOf(Member member, Corners corners)
    {
        ref var kind = ref CollectionsMarshal.GetValueRefOrAddDefault(
            _kinds, (member.Role, member.Stock, member.Section, corners.Points.Length), out var known);
        return known ? kind : kind = _kinds.Count;
    }

    private readonly record struct Cell(int Kind, long Length, long ShapeSum)
    {
        public List<int> Own(Dictionary<Cell, List<int>> grid) =>
            CollectionsMarshal.GetValueRefOrAddDefault(grid, this, out _) ??= [];

        public IEnumerable<List<int>> Around(Dictionary<Cell, List<int>> grid)
        {
            for (var i = -1; i <= 1; i++)
            {
                for (var j = -1; j <= 1; j++)
                {
                    if (grid.TryGetValue(this with { Length = Length + i, ShapeSum = ShapeSum + j }, out var found))
                    {
                        yield return found;
                    }
                }
            }
        }
    }
}

/// <summary>
/// Gives out the marks of one bridge, each once. A number goes either to one piece without a hand, or to a left and a right
/// one; the second of these is given once. That two parts agree within a tolerance says nothing about a third, so whether a
/// mark is free is asked here and never taken from what agrees with what.
/// </summary>
internal sealed class MarkNumbers
{
    private readonly Dictionary<Role, int> _last = [];
    private readonly HashSet<(Role Role, int Number)> _open = [];

    /// <summary>The next number, for a piece that is its own mirror image.</summary>
    public MarkName WithoutHand(Role role) => new(role, Next(role), Hand.None);

    /// <summary>The next number, for the first hand of a pair: right for a part of the right side, else left.</summary>
    public MarkName WithHand(Role role, Side side)
    {
        var name = new MarkName(role, Next(role), side == Side.Right ? Hand.Right : Hand.Left);
        _open.Add((role, name.Number));
        return name;
    }

    /// <summary>Whether a mark has a hand whose other one is still free.</summary>
    public bool HasOtherHand(MarkName name) => _open.Contains((name.Role, name.Number));

    /// <summary>The other hand of a mark; false where it has none or that is taken.</summary>
    public bool TryOtherHand(MarkName name, out MarkName other)
    {
        other = name with { Hand = name.Hand == Hand.Left ? Hand.Right : Hand.Left };
        return _open.Remove((name.Role, name.Number));
    }

    private int Next(Role role) => ++CollectionsMarshal.GetValueRefOrAddDefault(_last, role, out _);
}
