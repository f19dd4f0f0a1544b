using System.Runtime.InteropServices;
using BridgeForm.Roles;

namespace BridgeForm.Pieces;

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
