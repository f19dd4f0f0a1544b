namespace BridgeForm.Output.Drawing;

/// <summary>Boxes around what is drawn on a printed page, with texts as wide as the page's font sets them.</summary>
internal static class PageBox
{
    /// <summary>The smallest upright box around an entity.</summary>
    public static SheetBox Of(SheetEntity entity) => entity switch
    {
        SheetText text => Of(text),
        SheetDimension dimension => Of(DimensionLines.Turned(dimension)),
        _ => EntityBox.Of(entity),
    };

    /// <summary>The smallest upright box around entities.</summary>
    public static SheetBox Of(IEnumerable<SheetEntity> entities) =>
        entities.Aggregate(SheetBox.Empty, (box, entity) => box.Union(Of(entity)));

    private static SheetBox Of(SheetText text)
    {
        var width = PageFont.Of(text).Width(text.Text, text.Height);
        var (sin, cos) = Math.SinCos(text.Turn);
        var box = SheetBox.Empty;
        foreach (var along in (ReadOnlySpan<double>)[0, width])
        {
            foreach (var up in (ReadOnlySpan<double>)[-PageFont.Descent * text.Height, text.Height])
            {
                box = box.With(text.At.X + (along * cos) - (up * sin), text.At.Y + (along * sin) + (up * cos));
            }
        }

        return box;
    }
}
