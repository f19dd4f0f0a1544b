using System.Globalization;
using System.Text;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Dxf;

/// <summary>Writes entities into a block, of which model space is one.</summary>
/// <param name="tags">Where to.</param>
/// <param name="scale">Units of the file in a metre.</param>
/// <param name="firstHandle">Handle of the first entity.</param>
/// <param name="owner">Handle of the block that they belong to.</param>
internal sealed class DxfEntities(DxfTags tags, double scale, int firstHandle, int owner)
{
    private int handle = firstHandle;

    /// <summary>Writes one entity.</summary>
    public void Write(SheetEntity entity)
    {
        switch (entity)
        {
            case SheetLine line:
                Begin("LINE", line.Layer, "AcDbLine");
                Point(10, line.From);
                Point(11, line.To);
                break;
            case SheetPolyline polyline:
                Write(polyline);
                break;
            case SheetCircle circle:
                Begin("CIRCLE", circle.Layer, "AcDbCircle");
                Point(10, circle.Center);
                tags.Add(40, circle.Radius * scale);
                break;
            case SheetArc arc:
                Write(arc);
                break;
            case SheetText text:
                Write(text);
                break;
            default:
                throw new NotSupportedException(entity.GetType().Name);
        }
    }

    /// <summary>
    /// A dimension between two points, along them; its look is the block's, so that readers without dimensions draw that. Group codes
    /// after the DXF reference, from memory.
    /// </summary>
    public void Write(DimensionBlock block)
    {
        const int aligned = 1, ownBlock = 32, middle = 5;
        var dimension = block.Dimension;
        Begin("DIMENSION", dimension.Layer, "AcDbDimension");
        tags.Add(2, block.Name);
        Point(10, block.LineEnd);
        Point(11, block.TextMiddle);
        tags.Add(70, aligned + ownBlock);
        tags.Add(1, DxfText.Encoded(dimension.Text));
        tags.Add(71, middle);
        tags.Add(42, Dimensions.Distance(dimension.From, dimension.To) * scale);
        tags.Add(3, "Standard");
        tags.Add(100, "AcDbAlignedDimension");
        Point(13, dimension.From);
        Point(14, dimension.To);
    }

    private void Begin(string type, string layer, string subclass)
    {
        tags.Add(0, type);
        tags.Handle(5, handle++);
        tags.Handle(330, owner);
        tags.Add(100, "AcDbEntity");
        tags.Add(8, layer);
        tags.Add(100, subclass);
    }

    private void Point(int code, SheetPoint point) => tags.Point(code, point.X * scale, point.Y * scale);

    private void Write(SheetPolyline polyline)
    {
        Begin("LWPOLYLINE", polyline.Layer, "AcDbPolyline");
        tags.Add(90, polyline.Vertices.Length);
        tags.Add(70, polyline.Closed ? 1 : 0);
        foreach (var vertex in polyline.Vertices)
        {
            tags.Add(10, vertex.X * scale);
            tags.Add(20, vertex.Y * scale);
            if (vertex.Bulge is < 0 or > 0)
            {
                tags.Add(42, vertex.Bulge);
            }
        }
    }

    /// <summary>An arc is a circle with a subclass of its own for the two angles, in degrees.</summary>
    private void Write(SheetArc arc)
    {
        Begin("ARC", arc.Layer, "AcDbCircle");
        Point(10, arc.Center);
        tags.Add(40, arc.Radius * scale);
        tags.Add(100, "AcDbArc");
        tags.Add(50, Numbers.Degrees(arc.Start));
        tags.Add(51, Numbers.Degrees(arc.End));
    }

    /// <summary>A text names its subclass a second time, before the vertical alignment.</summary>
    private void Write(SheetText text)
    {
        Begin("TEXT", text.Layer, "AcDbText");
        Point(10, text.At);
        tags.Add(40, text.Height * scale);
        tags.Add(1, DxfText.Encoded(text.Text));
        tags.Add(100, "AcDbText");
    }
}

/// <summary>Texts as a DXF file holds them: ASCII, with escapes for what is not.</summary>
internal static class DxfText
{
    /// <summary>
    /// A degree sign becomes <c>%%d</c>, a diameter sign <c>%%c</c>, plus-or-minus <c>%%p</c>, other characters beyond
    /// ASCII <c>\U+XXXX</c>; control characters become spaces.
    /// </summary>
    public static string Encoded(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~'))
        {
            return text;
        }

        var result = new StringBuilder();
        foreach (var c in text)
        {
            _ = c switch
            {
                '°' => result.Append("%%d"),
                '⌀' or 'Ø' => result.Append("%%c"),
                '±' => result.Append("%%p"),
                >= ' ' and <= '~' => result.Append(c),
                < ' ' or '\u007f' => result.Append(' '),
                _ => result.Append(CultureInfo.InvariantCulture, $"\\U+{(int)c:X4}"),
            };
        }

        return result.ToString();
    }
}
