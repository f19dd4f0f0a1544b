using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Solids;

namespace BridgeForm.Contacts;

/// <summary>A member as the survey sees it: convex cells in the world, the box around them, and whom it has met.</summary>
internal sealed class Neighbour
{
    private readonly List<(string Id, double Depth)> _met = [];

    /// <summary>The member where it lies.</summary>
    /// <param name="carriers">What it must rest on: of each set at least one part.</param>
    public Neighbour(Member member, ImmutableArray<string[]> carriers)
    {
        Member = member;
        Carriers = carriers;
        Cells = [.. StockSolid.ConvexCells(member.Shape).Select(cell => cell.Placed(member.Placement))];
        Box = Box3.Around(Cells.SelectMany(c => c.Vertices));
    }

    /// <summary>The member.</summary>
    public Member Member { get; }

    /// <summary>What it must rest on.</summary>
    public ImmutableArray<string[]> Carriers { get; }

    /// <summary>Its cells, holes left out.</summary>
    public ImmutableArray<ConvexBody> Cells { get; }

    /// <summary>Box around all cells.</summary>
    public Box3 Box { get; }

    /// <summary>Whether the other is among what it must rest on.</summary>
    public bool RestsOn(Neighbour other)
    {
        foreach (var set in Carriers)
        {
            if (Array.IndexOf(set, other.Member.Id) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Remembers how deep it lies in another part, metres; negative when apart.</summary>
    public void Note(string id, double depth)
    {
        if (!Carriers.IsEmpty)
        {
            _met.Add((id, depth));
        }
    }

    /// <summary>The smallest gap to any of these parts, metres; infinite when it has met none of them.</summary>
    public double GapTo(string[] ids)
    {
        var gap = double.PositiveInfinity;
        foreach (var (id, depth) in _met)
        {
            if (Array.IndexOf(ids, id) >= 0)
            {
                gap = Math.Min(gap, -depth);
            }
        }

        return gap;
    }
}
