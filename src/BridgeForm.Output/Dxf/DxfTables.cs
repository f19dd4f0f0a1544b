using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using static BridgeForm.Output.Dxf.DxfHandles;

namespace BridgeForm.Output.Dxf;

/// <summary>The TABLES section: nine tables, each needed by readers of AC1015 even where nothing uses it.</summary>
internal static class DxfTables
{
    private const string Continuous = "Continuous";
    private const string Standard = "Standard";
    private const string Dashed = "DASHED";

    /// <summary>A stroke of the dashed line, at true size on the piece, metres; its gap is half as long.</summary>
    private const double Stroke = 0.008;

    // Weights of lines in the units of the DXF reference, and its number for the reader's own (from memory).
    private const double HundredthsOfAMillimetre = 1e5;
    private const int ByDefault = -3;

    /// <summary>Writes the section.</summary>
    /// <param name="tags">Where to.</param>
    /// <param name="layers">Layers besides layer 0.</param>
    /// <param name="box">Extents of the drawing in its own unit; the opening view is set to it.</param>
    /// <param name="scale">Units of the file in a metre.</param>
    /// <param name="dimensions">Dimensions whose blocks have a record each.</param>
    public static void Write(DxfTags tags, ImmutableArray<SheetLayer> layers, SheetBox box, double scale, DxfDimensions dimensions)
    {
        Table(tags, "VPORT", ViewportTable, 1, () => Viewport(tags, box));
        Table(tags, "LTYPE", LinetypeTable, 4, () => Linetypes(tags, scale));
        Table(tags, "LAYER", LayerTable, layers.Length + 1, () => Layers(tags, layers));
        Table(tags, "STYLE", StyleTable, 1, () => Style(tags));
        Table(tags, "VIEW", ViewTable, 0, () => { });
        Table(tags, "UCS", UcsTable, 0, () => { });
        Table(tags, "APPID", AppIdTable, 1, () =>
            Record(tags, "APPID", AppId, AppIdTable, "AcDbRegAppTableRecord", "ACAD"));
        Table(tags, "DIMSTYLE", DimStyleTable, 1, () => DimStyles(tags));
        Table(tags, "BLOCK_RECORD", BlockRecordTable, 2 + dimensions.Blocks.Length, () => BlockRecords(tags, dimensions));
    }

    private static void Table(DxfTags tags, string name, int handle, int count, Action records)
    {
        tags.Add(0, "TABLE");
        tags.Add(2, name);
        tags.Handle(5, handle);
        tags.Add(330, "0");
        tags.Add(100, "AcDbSymbolTable");
        tags.Add(70, count);
        records();
        tags.Add(0, "ENDTAB");
    }

    private static void Record(
        DxfTags tags, string type, int handle, int owner, string subclass, string name, bool flags = true)
    {
        tags.Add(0, type);
        tags.Handle(5, handle);
        tags.Handle(330, owner);
        tags.Add(100, "AcDbSymbolTableRecord");
        tags.Add(100, subclass);
        tags.Add(2, name);
        if (flags)
        {
            tags.Add(70, 0);
        }
    }

    private static void Viewport(DxfTags tags, SheetBox box)
    {
        Record(tags, "VPORT", DxfHandles.Viewport, ViewportTable, "AcDbViewportTableRecord", "*Active");
        Pair(tags, 10, 0, 0);
        Pair(tags, 11, 1, 1);
        Pair(tags, 12, (box.MinX + box.MaxX) / 2, (box.MinY + box.MaxY) / 2);
        tags.Point(16, 0, 0);
        tags.Add(36, 1.0);
        tags.Add(40, Math.Max(box.MaxY - box.MinY, (box.MaxX - box.MinX) / 2));
        tags.Add(41, 2.0);
        tags.Add(42, 50.0);
    }

    private static void Pair(DxfTags tags, int code, double x, double y)
    {
        tags.Add(code, x);
        tags.Add(code + 10, y);
    }

    private static void Linetypes(DxfTags tags, double scale)
    {
        Linetype(tags, LinetypeByBlock, "ByBlock");
        Linetype(tags, LinetypeByLayer, "ByLayer");
        Linetype(tags, LinetypeContinuous, Continuous);
        Linetype(tags, LinetypeDashed, Dashed, Stroke * scale, -Stroke / 2 * scale);
    }

    /// <summary>A line of strokes (positive) and gaps (negative) in units of the file; a full line where there are none.</summary>
    private static void Linetype(DxfTags tags, int handle, string name, params ReadOnlySpan<double> pattern)
    {
        Record(tags, "LTYPE", handle, LinetypeTable, "AcDbLinetypeTableRecord", name);
        tags.Add(3, string.Empty);
        tags.Add(72, 65);
        tags.Add(73, pattern.Length);
        var length = 0.0;
        foreach (var part in pattern)
        {
            length += Math.Abs(part);
        }

        tags.Add(40, length);
        foreach (var part in pattern)
        {
            tags.Add(49, part);
            tags.Add(74, 0);
        }
    }

    private static void Layers(DxfTags tags, ImmutableArray<SheetLayer> layers)
    {
        Layer(tags, FirstLayer, "0", DxfColours.White, Continuous, ByDefault);
        for (var i = 0; i < layers.Length; i++)
        {
            var (name, purpose) = (layers[i].Name, layers[i].Purpose);
            Layer(
                tags, FirstLayer + 1 + i, name, DxfColours.Of(purpose), purpose == LayerPurpose.FarEdge ? Dashed : Continuous,
                (int)Rounding.ToDecimals(LayerStyle.Of(purpose).Weight * HundredthsOfAMillimetre, 0));
        }
    }

    private static void Layer(DxfTags tags, int handle, string name, int colour, string linetype, int weight)
    {
        Record(tags, "LAYER", handle, LayerTable, "AcDbLayerTableRecord", name);
        tags.Add(62, colour);
        tags.Add(6, linetype);
        tags.Add(370, weight);
    }

    private static void Style(DxfTags tags)
    {
        Record(tags, "STYLE", DxfHandles.Style, StyleTable, "AcDbTextStyleTableRecord", Standard);
        tags.Add(40, 0.0);
        tags.Add(41, 1.0);
        tags.Add(50, 0.0);
        tags.Add(71, 0);
        tags.Add(42, 1.0);
        tags.Add(3, "txt");
        tags.Add(4, string.Empty);
    }

    /// <summary>The one table whose records carry their handle under code 105 and whose head has a subclass of its own.</summary>
    private static void DimStyles(DxfTags tags)
    {
        tags.Add(100, "AcDbDimStyleTable");
        tags.Add(0, "DIMSTYLE");
        tags.Handle(105, DimStyle);
        tags.Handle(330, DimStyleTable);
        tags.Add(100, "AcDbSymbolTableRecord");
        tags.Add(100, "AcDbDimStyleTableRecord");
        tags.Add(2, Standard);
        tags.Add(70, 0);
        tags.Handle(340, DxfHandles.Style);
    }

    private static void BlockRecords(DxfTags tags, DxfDimensions dimensions)
    {
        Record(tags, "BLOCK_RECORD", ModelSpace, BlockRecordTable, "AcDbBlockTableRecord", "*Model_Space", flags: false);
        Record(tags, "BLOCK_RECORD", PaperSpace, BlockRecordTable, "AcDbBlockTableRecord", "*Paper_Space", flags: false);
        foreach (var block in dimensions.Blocks)
        {
            Record(tags, "BLOCK_RECORD", block.Handle, BlockRecordTable, "AcDbBlockTableRecord", block.Name, flags: false);
        }
    }
}

/// <summary>
/// Colour numbers of the standard drawing palette, in an order of our own: from warm to cold by how much wood the tool takes,
/// then what is only drawn. Each stands out from a white page and from a black one, by at least 3 to 1 (WCAG 2.2, 1.4.11, for
/// what is no text); the tests measure it by the palette of an outside reader.
/// </summary>
internal static class DxfColours
{
    /// <summary>White on a dark page, black on a light one.</summary>
    public const int White = 7;

    private const int OrangeRed = 20;
    private const int Rose = 230;
    private const int Violet = 200;
    private const int Azure = 150;
    private const int Teal = 132;
    private const int Green = 92;
    private const int Ochre = 42;
    private const int Grey = 8;

    /// <summary>Colour of a layer by what its lines mean.</summary>
    public static int Of(LayerPurpose purpose) => purpose switch
    {
        LayerPurpose.Cut => OrangeRed,
        LayerPurpose.Pocket => Rose,
        LayerPurpose.Drill => Violet,
        LayerPurpose.Engraving => Azure,
        LayerPurpose.FarEdge => Ochre,
        LayerPurpose.Layout => Green,
        LayerPurpose.Dimension => Teal,
        LayerPurpose.Note => White,
        LayerPurpose.Wood => Grey,
        _ => throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "No such purpose."),
    };
}
