using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace BridgeForm.Stocking.Cutting;

/// <summary>
/// The most valuable filling of boards of several lengths at once: dynamic programming over the fillings that no other beats
/// in both length and value (Nemhauser and Ullmann, 1969), on true lengths, nothing rounded. Fillings that cannot reach a
/// board's goal with the best piece still to come are dropped.
/// </summary>
internal sealed class ParetoKnapsack
{
    private readonly double[] _capacities;
    private readonly double[] _goals;
    private readonly List<Node> _nodes = [];
    private List<int> _front = [];
    private List<int> _next = [];

    private ParetoKnapsack(double[] capacities, double[] goals)
    {
        _capacities = capacities;
        _goals = goals;
    }

    /// <summary>
    /// The best filling of each board that is worth more than its goal; null for a board without one. Default when there are
    /// too many fillings to compare.
    /// </summary>
    /// <param name="problem">Lengths and boards.</param>
    /// <param name="values">Value of a piece of each length; those at or below 0 are left out.</param>
    /// <param name="limits">Most pieces of each length.</param>
    /// <param name="goals">Value that a filling of each board must exceed.</param>
    /// <param name="budget">Most fillings to compare; what is left of it.</param>
    public static ImmutableArray<Filling?> Best(
        CuttingProblem problem, double[] values, ImmutableArray<int> limits, double[] goals, ref int budget)
    {
        var capacities = Enumerable.Range(0, problem.Boards.Length).Select(problem.Capacity).ToArray();
        var search = new ParetoKnapsack(capacities, goals);
        var bundles = Bundle.List(problem, values, limits, capacities[^1]);
        search._nodes.Add(new Node(0, 0, -1, 0, 0));
        search._front.Add(0);
        for (var i = 0; i < bundles.Count; i++)
        {
            search.Offer(bundles[i], i + 1 < bundles.Count ? bundles[i + 1].Density : 0);
            budget -= search._front.Count;
            if (budget < 0)
            {
                return default;
            }
        }

        return [.. Enumerable.Range(0, capacities.Length).Select(b => search.BestOf(b, problem.Count))];
    }

    /// <summary>Merges the front with itself plus the bundle; both are sorted by weight and rise in value.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)] // the first job of a run is most of its work
    private void Offer(Bundle bundle, double densityToCome)
    {
        _next.Clear();
        var best = double.NegativeInfinity;
        int plain = 0, shifted = 0;
        while (plain < _front.Count || shifted < _front.Count)
        {
            var without = plain < _front.Count ? _nodes[_front[plain]] : Node.Beyond;
            var with = shifted < _front.Count ? _nodes[_front[shifted]].Plus(bundle, _front[shifted]) : Node.Beyond;
            var takeWith = with.Weight < without.Weight;
            var node = takeWith ? with : without;
            if (node.Weight > _capacities[^1])
            {
                break;
            }

            if (node.Value > best && CanReachGoal(node, densityToCome))
            {
                best = node.Value;
                _next.Add(takeWith ? _nodes.Count : _front[plain]);
                if (takeWith)
                {
                    _nodes.Add(node);
                }
            }

            _ = takeWith ? shifted++ : plain++;
        }

        (_front, _next) = (_next, _front);
    }

    private bool CanReachGoal(Node node, double densityToCome)
    {
        for (var b = _capacities.Length - 1; b >= 0 && _capacities[b] >= node.Weight; b--)
        {
            if (node.Value + ((_capacities[b] - node.Weight) * densityToCome) > _goals[b])
            {
                return true;
            }
        }

        return false;
    }

    private Filling? BestOf(int board, int items)
    {
        var best = -1;
        foreach (var index in _front)
        {
            best = _nodes[index].Weight <= _capacities[board] ? index : best;
        }

        if (best < 0 || _nodes[best].Value <= _goals[board])
        {
            return null;
        }

        var counts = new int[items];
        for (var at = best; at > 0; at = _nodes[at].Parent)
        {
            counts[_nodes[at].Item] += _nodes[at].Count;
        }

        return new Filling(counts, _nodes[best].Value);
    }

    private readonly record struct Node(double Weight, double Value, int Parent, int Item, int Count)
    {
        public static Node Beyond => new(double.PositiveInfinity, 0, -1, 0, 0);

        public Node Plus(Bundle bundle, int self) =>
            new(Weight + bundle.Weight, Value + bundle.Value, self, bundle.Item, bundle.Count);
    }
}
