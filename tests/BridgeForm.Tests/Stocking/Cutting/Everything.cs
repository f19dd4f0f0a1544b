namespace BridgeForm.Tests.Stocking.Cutting;

/// <summary>The cheapest way to cut a few pieces, found by trying every way to put them on boards.</summary>
internal static class Everything
{
    public static double Cheapest(double[] pieces, double[] boards, double[] costs, double kerf)
    {
        var best = double.PositiveInfinity;
        Place(0, []);
        return best;

        void Place(int next, List<List<double>> groups)
        {
            if (next == pieces.Length)
            {
                best = Math.Min(best, groups.Sum(CostOf));
                return;
            }

            foreach (var group in groups.ToList())
            {
                group.Add(pieces[next]);
                if (CostOf(group) < double.PositiveInfinity)
                {
                    Place(next + 1, groups);
                }

                group.RemoveAt(group.Count - 1);
            }

            groups.Add([pieces[next]]);
            Place(next + 1, groups);
            groups.RemoveAt(groups.Count - 1);
        }

        double CostOf(List<double> group)
        {
            var needed = group.Sum() + ((group.Count - 1) * kerf);
            return boards.Zip(costs).Where(
                b => b.First + 1e-9 >= needed).Select(b => b.Second).DefaultIfEmpty(double.PositiveInfinity).Min();
        }
    }
}
