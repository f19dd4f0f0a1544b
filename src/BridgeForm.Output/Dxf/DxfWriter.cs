using System.Collections.Immutable;
using BridgeForm.Output.Drawing;
using BridgeForm.Quantities;
using static BridgeForm.Output.Dxf.DxfHandles;

namespace BridgeForm.Output.Dxf;

/// <summary>
/// Writes a sheet as a DXF file of version AC1015 (the oldest with a unit variable and lightweight polylines). Structure
/// after the published DXF reference, from memory, and proved by outside readers in the tests.
/// </summary>
public static class DxfWriter
{
    private const double MetresInAnInch = Quantities.Units.MetresPerInch;
    private const double MetresInAMillimetre = 0.001;

    // Flag of a block without a name of its own (DXF reference, from memory).
    private const int Anonymous = 1;

    // The group code of a comment, which readers pass over (DXF reference, from memory).
    private const int Comment = 999;

    /// <summary>Writes the sheet in inches or millimetres; the stream stays open. Same sheet, same bytes.</summary>
    public static void Write(Sheet sheet, UnitSystem units, Stream stream)
    {
        var scale = 1 / (units == UnitSystem.Imperial ? MetresInAnInch : MetresInAMillimetre);
        var box = Scaled(sheet.Extents(), scale);
        var first = FirstEntity(sheet.Layers.Length);
        var dimensions = DxfDimensions.Number(sheet.Entities, first + sheet.Entities.Length);

        using var tags = new DxfTags(stream);
        foreach (var remark in sheet.Remarks)
        {
            tags.Add(Comment, DxfText.Encoded(remark));
        }

        Section(tags, "HEADER", () => Header(tags, units, box, dimensions.NextHandle));
        Section(tags, "CLASSES", () => { });
        Section(tags, "TABLES", () => DxfTables.Write(tags, sheet.Layers, box, scale, dimensions));
        Section(tags, "BLOCKS", () => Blocks(tags, scale, dimensions));
        Section(tags, "ENTITIES", () => Entities(new DxfEntities(tags, scale, first, ModelSpace), sheet.Entities, dimensions));
        Section(tags, "OBJECTS", () => Objects(tags));
        tags.Add(0, "EOF");
    }

    private static SheetBox Scaled(SheetBox box, double scale) => box.IsEmpty
        ? new SheetBox(0, 0, 1, 1)
        : new SheetBox(box.MinX * scale, box.MinY * scale, box.MaxX * scale, box.MaxY * scale);

    private static void Section(DxfTags tags, string name, Action content)
    {
        tags.Add(0, "SECTION");
        tags.Add(2, name);
        content();
        tags.Add(0, "ENDSEC");
    }

    private static void Entities(DxfEntities writer, ImmutableArray<SheetEntity> entities, DxfDimensions dimensions)
    {
        var blocks = new Queue<DimensionBlock>(dimensions.Blocks);
        foreach (var entity in entities)
        {
            if (entity is SheetDimension)
            {
                writer.Write(blocks.Dequeue());
            }
            else
            {
                writer.Write(entity);
            }
        }
    }

    private static void Header(DxfTags tags, UnitSystem units, SheetBox box, int nextHandle)
    {
        var inches = units == UnitSystem.Imperial;
        tags.Add(9, "$ACADVER");
        tags.Add(1, "AC1015");
        tags.Add(9, "$DWGCODEPAGE");
        tags.Add(3, "ANSI_1252");
        tags.Add(9, "$INSBASE");
        tags.Point(10, 0, 0);
        tags.Add(9, "$EXTMIN");
        tags.Point(10, box.MinX, box.MinY);
        tags.Add(9, "$EXTMAX");
        tags.Point(10, box.MaxX, box.MaxY);
        tags.Add(9, "$LUNITS");
        tags.Add(70, 2);
        tags.Add(9, "$MEASUREMENT");
        tags.Add(70, inches ? 0 : 1);
        tags.Add(9, "$INSUNITS");
        tags.Add(70, inches ? 1 : 4);
        tags.Add(9, "$HANDSEED");
        tags.Handle(5, nextHandle);
    }

    private static void Blocks(DxfTags tags, double scale, DxfDimensions dimensions)
    {
        Block(tags, "*Model_Space", ModelSpace, ModelBlock, ModelBlockEnd, paper: false);
        Block(tags, "*Paper_Space", PaperSpace, PaperBlock, PaperBlockEnd, paper: true);
        foreach (var block in dimensions.Blocks)
        {
            Block(tags, block.Name, block.Handle, block.Handle + 1, block.Handle + 2, paper: false, () =>
            {
                var writer = new DxfEntities(tags, scale, block.Handle + DimensionBlock.OwnHandles, block.Handle);
                foreach (var part in block.Parts)
                {
                    writer.Write(part);
                }
            });
        }
    }

    private static void Block(DxfTags tags, string name, int record, int begin, int end, bool paper, Action? content = null)
    {
        BlockPart(tags, "BLOCK", "AcDbBlockBegin", begin, record, paper);
        tags.Add(2, name);
        tags.Add(70, content is null ? 0 : Anonymous);
        tags.Point(10, 0, 0);
        tags.Add(3, name);
        tags.Add(1, string.Empty);
        content?.Invoke();
        BlockPart(tags, "ENDBLK", "AcDbBlockEnd", end, record, paper);
    }

    private static void BlockPart(DxfTags tags, string type, string subclass, int handle, int record, bool paper)
    {
        tags.Add(0, type);
        tags.Handle(5, handle);
        tags.Handle(330, record);
        tags.Add(100, "AcDbEntity");
        if (paper)
        {
            tags.Add(67, 1);
        }

        tags.Add(8, "0");
        tags.Add(100, subclass);
    }

    /// <summary>The root dictionary with the one entry that readers look for.</summary>
    private static void Objects(DxfTags tags)
    {
        Dictionary(tags, Root, "0");
        tags.Add(3, "ACAD_GROUP");
        tags.Handle(350, Groups);
        Dictionary(tags, Groups, DxfTags.HandleText(Root));
    }

    private static void Dictionary(DxfTags tags, int handle, string owner)
    {
        tags.Add(0, "DICTIONARY");
        tags.Handle(5, handle);
        tags.Add(330, owner);
        tags.Add(100, "AcDbDictionary");
        tags.Add(281, 1);
    }
}
