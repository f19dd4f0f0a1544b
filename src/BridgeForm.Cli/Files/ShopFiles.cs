using BridgeForm.Output;
using BridgeForm.Output.Pdf;
using BridgeForm.Output.ShopSheets;
using BridgeForm.Output.Templates;

namespace BridgeForm.Cli.Files;

/// <summary>Printed matter for the shop.</summary>
internal static class ShopFiles
{
    /// <summary>One file of templates a piece that needs them, and one of the whole set.</summary>
    public static void WriteTemplates(BridgeModel model, PeopleUnits units, KindFiles output)
    {
        foreach (var piece in model.Pieces.Where(TemplateSet.Needs))
        {
            output.Write($"templates/{piece.Mark}.pdf", stream => PdfWriter.Write(TemplateSet.Of(model, piece, units), stream));
        }

        output.Write("templates/all.pdf", stream => PdfWriter.Write(TemplateSet.All(model, units), stream));
    }

    /// <summary>Saw set-ups, and labels in the order of assembly.</summary>
    public static void WriteSheets(BridgeModel model, PeopleUnits units, KindFiles output)
    {
        output.Write("saw-setups.pdf", stream => PdfWriter.Write(SawSheet.Of(model, units), stream));
        var order = model.Assembly().SelectMany(step => step.Parts).ToList();
        output.Write("labels.pdf", stream => PdfWriter.Write(LabelSheet.Of(model, order), stream));
    }
}
