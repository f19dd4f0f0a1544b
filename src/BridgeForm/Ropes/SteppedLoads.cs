using System.Collections.Immutable;

namespace BridgeForm.Ropes;

/// <summary>
/// Loads that jump as the shape moves, because parts come by whole numbers: one tread more in a bay, a packer or none.
/// </summary>
/// <param name="Loads">Loads as in <see cref="DesignRequest.NodeLoads"/>, made with the steps that were asked for.</param>
/// <param name="Steps">
/// The whole numbers that go with these positions. Each is counted so that the smaller of two neighbouring values fits at
/// both sides of its threshold.
/// </param>
public readonly record struct SteppedLoads(ImmutableArray<double> Loads, ImmutableArray<int> Steps)
{
    /// <summary>Loads that are no numbers: nobody weighs any more, and the shape is given up.</summary>
    public static SteppedLoads GivenUp(int nodes, ImmutableArray<int> steps) => new([.. Enumerable.Repeat(double.NaN, nodes)], steps);
}

/// <summary>
/// Whole numbers of parts while shape and loads are sought in turn. Where they and the shape chase each other in a circle,
/// those in dispute are held at their smaller value, which fits the shapes of both sides.
/// </summary>
internal sealed class HeldSteps
{
    // Shapes that ask for new numbers each time are taken for a circle after so many; most close after two.
    private const int LongestChase = 8;

    private readonly SortedDictionary<int, int> _held = [];
    private readonly List<ImmutableArray<int>> _tried = [];

    /// <summary>Starts with the numbers that go with some first shape.</summary>
    public HeldSteps(ImmutableArray<int> first) => Current = first;

    /// <summary>The numbers to find a shape with.</summary>
    public ImmutableArray<int> Current { get; private set; }

    /// <summary>
    /// Takes the numbers that the shape found with <see cref="Current"/> asks for; true when they are the same, but for those
    /// that are held.
    /// </summary>
    public bool Settles(ImmutableArray<int> asked)
    {
        var next = WithHeld(asked);
        if (next.SequenceEqual(Current))
        {
            return true;
        }

        _tried.Add(Current);
        var seen = _tried.FindIndex(t => t.SequenceEqual(next));
        if (seen >= 0 || _tried.Count == LongestChase)
        {
            Hold([.. _tried.Skip(Math.Max(0, seen)), next]);
            _tried.Clear();
        }

        Current = WithHeld(next);
        return false;
    }

    private void Hold(List<ImmutableArray<int>> circle)
    {
        for (var i = 0; i < Current.Length; i++)
        {
            var (low, high) = (circle.Min(t => t[i]), circle.Max(t => t[i]));
            if (low < high)
            {
                _held[i] = low;
            }
        }
    }

    private ImmutableArray<int> WithHeld(ImmutableArray<int> steps)
    {
        var all = steps.ToBuilder();
        foreach (var (i, value) in _held)
        {
            all[i] = value;
        }

        return all.ToImmutable();
    }
}
