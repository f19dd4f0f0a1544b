using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>
/// Lays items on plates, in rows from the front left and in the order of building. A kind begins a row, the ground a plate: it is
/// printed in another colour.
/// </summary>
internal static class PlateLayout
{
    // Room for a brim around each. Common practice, no source.
    private const double Gap = 0.004;

    /// <summary>Everything in its place.</summary>
    /// <param name="items">In the order in which they are wanted.</param>
    /// <param name="scale">Model to bridge.</param>
    /// <param name="wide">Usable width of the bed, metres.</param>
    /// <param name="deep">Usable depth.</param>
    public static ImmutableArray<PlacedItem> Lay(IEnumerable<PrintItem> items, double scale, double wide, double deep)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedItem>();
        var (plate, x, y, row) = (1, 0.0, 0.0, 0.0);
        foreach (var kind in items.GroupBy(i => i.Kind).OrderBy(g => g.Key))
        {
            if (kind.Key == PrintKind.Ground)
            {
                (plate, x, y, row) = (plate + 1, 0, 0, 0);
            }
            else if (x > 0)
            {
                (x, y, row) = (0, y + row + Gap, 0);
            }

            foreach (var item in kind.Select(i => Oriented(i, scale, wide, deep)))
            {
                var size = Size(item, scale);
                if (x > 0 && x + size.X > wide + Tolerances.RoundOff)
                {
                    (x, y, row) = (0, y + row + Gap, 0);
                }

                if (y > 0 && y + size.Y > deep + Tolerances.RoundOff)
                {
                    (plate, x, y, row) = (plate + 1, 0, 0, 0);
                }

                placed.Add(new PlacedItem(plate, item, PrintFit.Margin + x, PrintFit.Margin + y, size));
                (x, row) = (x + size.X + Gap, Math.Max(row, size.Y));
            }
        }

        return placed.ToImmutable();
    }

    // Turned only where it does not fit as it lies.
    private static PrintItem Oriented(PrintItem item, double scale, double wide, double deep)
    {
        var (size, turned) = (Size(item, scale), item.Turned());
        return Fits(size) || !Fits(Size(turned, scale)) ? item : turned;

        bool Fits(Vector3d s) => s.X <= wide + Tolerances.RoundOff && s.Y <= deep + Tolerances.RoundOff;
    }

    private static Vector3d Size(PrintItem item, double scale)
    {
        var (low, high) = item.Box();
        return scale * (high - low);
    }
}
