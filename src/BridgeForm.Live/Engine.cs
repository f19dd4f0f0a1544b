using System.Runtime.InteropServices.JavaScript;
using BridgeForm.Materials;
using BridgeForm.Output.Live;
using BridgeForm.Project.Editing;
using BridgeForm.Project.Files;
using BridgeForm.Quantities;

namespace BridgeForm.Live;

/// <summary>
/// What a worker of the live page calls: one file at a time, its text the state. Everything that is answered is made by the
/// library; texts are JSON as <c>src/BridgeForm.Preview/src/live/engine.ts</c> says.
/// </summary>
internal static partial class Engine
{
    private const string FileName = "project.yaml";

    private static readonly PageBuild s_build = new();
    private static string s_problem = "";

    /// <summary>Hands over a file of the preview, which the page carries.</summary>
    [JSExport]
    internal static void Give(string name, string text) => PageAnswer.Give(name, text);

    /// <summary>The keys that have controls: <see cref="PageKeys"/>.</summary>
    [JSExport]
    internal static byte[] Keys() => PageKeys.Bytes();

    /// <summary>The file that a beginner starts from.</summary>
    [JSExport]
    internal static string Starter(bool metric) => BridgeForm.Starter.Text(metric ? UnitSystem.Metric : UnitSystem.Imperial);

    /// <summary>Reads a text; what it says and what is wrong with it: <see cref="PageState"/>.</summary>
    [JSExport]
    internal static byte[] Open(string text, string? prices)
    {
        var reading = ProjectReader.Read(text, FileName, RopeTable.Catalogue);
        return PageState.Bytes(reading, s_build.Take(reading, prices));
    }

    /// <summary>The text with one value written otherwise; empty where that cannot be, and then <see cref="Problem"/> says why.</summary>
    [JSExport]
    internal static string Write(string text, string path, string value) => Edited(FileEdit.Set(text, path, value));

    /// <summary>The text without a key.</summary>
    [JSExport]
    internal static string Remove(string text, string path) => Edited(FileEdit.Remove(text, path));

    /// <summary>Why the last text could not be written; empty where it could.</summary>
    [JSExport]
    internal static string Problem() => s_problem;

    /// <summary>A quantity as people write it, on the tape: a slider's place, a handle's.</summary>
    [JSExport]
    internal static string Say(string kind, double number, bool metric) => PageQuantity.Text(kind, number, metric);

    /// <summary>One step of the build of what was opened last; its name and what it brought: <see cref="PageBuild.Step"/>.</summary>
    [JSExport]
    internal static byte[] Step() => s_build.Step();

    /// <summary>model.glb of the last step that brought a model.</summary>
    [JSExport]
    internal static byte[] Glb() => s_build.Glb();

    /// <summary>The description that goes with it.</summary>
    [JSExport]
    internal static byte[] View() => PageAnswer.View(s_build.Model);

    /// <summary>Verdict, figures and checks; after the last step.</summary>
    [JSExport]
    internal static byte[] Checked() => PageAnswer.Checked(s_build.Model);

    /// <summary>Names of kinds of files, those of <c>make --only</c>.</summary>
    [JSExport]
    internal static string[] Kinds() => [.. Output.Kinds.OutputKinds.Words];

    /// <summary>Those that <c>make</c> writes where none is named.</summary>
    [JSExport]
    internal static string[] UsualKinds() => [.. Output.Kinds.OutputKinds.Usual];

    /// <summary>Makes the files of a kind; names of all made so far.</summary>
    [JSExport]
    internal static string[] Make(string kind) => s_build.Make(kind);

    /// <summary>A file that was made.</summary>
    [JSExport]
    internal static byte[] File(string name) => s_build.File(name);

    /// <summary>All that were made, as one zip archive.</summary>
    [JSExport]
    internal static byte[] Zip() => s_build.Zip();

    /// <summary>What may change is searched for ways that pass: <see cref="PageSearch"/>. Takes long: in a worker of its own.</summary>
    [JSExport]
    internal static byte[] Propose(
        string text, string? prices, [JSMarshalAs<JSType.Function<JSType.Number, JSType.String>>] Action<int, string> looked) =>
        PageSearch.Propose(text, prices, looked);

    /// <summary>A design for a site: <see cref="PageSearch"/>. Takes long: in a worker of its own.</summary>
    [JSExport]
    internal static byte[] Start(
        string span, string rise, bool isPublic, bool metric,
        [JSMarshalAs<JSType.Function<JSType.Number, JSType.String>>] Action<int, string> looked) =>
        PageSearch.Start(span, rise, isPublic, metric, looked);

    private static string Edited(EditResult edit)
    {
        s_problem = edit.Problem ?? "";
        return edit.Text ?? "";
    }
}
