using System.Collections.Immutable;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;
using BridgeForm.Output.Kinds;

namespace BridgeForm.Cli.Files;

/// <summary>Makes files of several kinds into a folder.</summary>
internal static class OutputFiles
{
    /// <summary>
    /// Writes the files of the given kinds, kinds side by side: each is a pure function of the model. The report ends last,
    /// since it lists the others.
    /// </summary>
    public static void Write(BridgeModel model, ImmutableHashSet<string> kinds, OutputFolder output, Progress progress)
    {
        var all = OutputKinds.Listing(() => [.. output.NamesOfOthers().Concat([OutputKinds.ReportFile, Manifest.FileName]).Order(StringComparer.Ordinal)]);
        OutputKind[] asked = [.. all.Where(k => kinds.Contains(k.Word))];
        var steps = progress.Of(asked.Length);
        var report = asked.FirstOrDefault(k => k.Word is OutputKinds.Report) is { } last ? Task.Run(() => Make(last)) : Task.CompletedTask;
        try
        {
            Together.Run(asked.Where(k => k.Word is not OutputKinds.Report).Select(k => (Action)(() => Make(k))).ToArray());
        }
        finally
        {
            output.OthersAreWritten();
            _ = Task.WaitAny(report);
        }

        report.GetAwaiter().GetResult();

        void Make(OutputKind kind)
        {
            kind.Make(model, new KindFiles(output, kind.Word));
            steps.Done(kind.Word);
        }
    }
}
