using BridgeForm.Output;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Dxf;
using BridgeForm.Output.Profiles;
using BridgeForm.Quantities;
using BridgeForm.Tests.Output.Profiles;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.Dxf;

/// <summary>Files to look at: each sample piece in inches, one in millimetres, and a sheet with every kind of entity.</summary>
internal static class DxfSamples
{
    public static TheoryData<string> Names => [.. ProfileSheetTests.All.Keys, "P1L-metric", "every-kind"];

    /// <summary>Every kind of entity, among them what only later drawings use.</summary>
    public static Sheet EveryKind { get; } = new(
        "every kind",
        [new SheetLayer("OUTLINE", LayerPurpose.Cut), new SheetLayer("DIM", LayerPurpose.Dimension)],
        [
            new SheetLine("OUTLINE", new(0, 0), new(1, 0)),
            new SheetPolyline("OUTLINE", [new(0, 0, 1), new(1, 0), new(1, 1, -0.5), new(0, 1)], Closed: true),
            new SheetCircle("OUTLINE", new(0.5, 0.5), 0.1),
            new SheetArc("OUTLINE", new(0.5, 0.5), 0.2, 0.1, Math.PI),
            new SheetText("OUTLINE", new(0, -0.2), 0.02, "8° ⌀ ± ½ Würfel\t"),
            new SheetDimension("DIM", new(0, 1), new(1, 1), new(0, 1.3), 0.02, "1000 mm"),
        ]);

    public static byte[] Bytes(string name)
    {
        var (sheet, units) = name switch
        {
            "every-kind" => (EveryKind, UnitSystem.Metric),
            "P1L-metric" => (Profile("P1L", SampleUnits.Metric), UnitSystem.Metric),
            _ => (Profile(name, SampleUnits.Imperial), UnitSystem.Imperial),
        };
        using var stream = new MemoryStream();
        DxfWriter.Write(sheet, units, stream);
        return stream.ToArray();
    }

    private static Sheet Profile(string mark, DisplayUnits units) => ProfileSheet.Draw(ProfileSheetTests.All[mark], units);
}
