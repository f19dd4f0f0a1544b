namespace BridgeForm.Output.Drawing;

/// <summary>Everything on a page by one factor larger: lengths, letters and radii; lines stay as wide as they are.</summary>
internal static class Enlarging
{
    /// <summary>The entities enlarged about the page's origin.</summary>
    public static IEnumerable<SheetEntity> By(double factor, IEnumerable<SheetEntity> entities) => entities.Select(e => Of(e, factor));

    private static SheetEntity Of(SheetEntity entity, double f) => entity switch
    {
        SheetLine line => line with { From = Of(line.From, f), To = Of(line.To, f) },
        SheetPolyline ring => ring with
        {
            Vertices = [.. ring.Vertices.Select(v => v with { X = v.X * f, Y = v.Y * f })],
        },
        SheetCircle circle => circle with { Center = Of(circle.Center, f), Radius = circle.Radius * f },
        SheetArc arc => arc with { Center = Of(arc.Center, f), Radius = arc.Radius * f },
        SheetText text => text with { At = Of(text.At, f), Height = text.Height * f },
        SheetArea area => area with { Corners = [.. area.Corners.Select(c => Of(c, f))] },
        _ => throw new NotSupportedException(entity.GetType().Name),
    };

    private static SheetPoint Of(SheetPoint p, double f) => new(p.X * f, p.Y * f);
}
