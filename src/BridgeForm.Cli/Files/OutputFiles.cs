using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;
using BridgeForm.Output.Kinds;
using BridgeForm.Output.Templates;

namespace BridgeForm.Cli.Files;

/// <summary>Makes files of several kinds into a folder.</summary>
internal static class OutputFiles
{
    /// <summary>
    /// Writes the files of the given kinds, kinds side by side: each is a pure function of the model. The report ends last,
    /// since it lists the others.
    /// </summary>
    public static void Write(
        BridgeModel model, ImmutableHashSet<string> kinds, TemplateChoice templates, OutputFolder output, Progress progress)
    {
        var all = OutputKinds.Listing(
            () => [.. output.NamesOfOthers().Concat([OutputKinds.ReportFile, Manifest.FileName]).Order(StringComparer.Ordinal)],
            templates);
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

/// <summary>The folder of results as the maker of one kind sees it.</summary>
internal sealed record KindFiles(OutputFolder Folder, string Kind) : IOutputSink
{
    /// <inheritdoc/>
    public void Write(string name, Action<Stream> write) => Folder.Write(Kind, name, write);
}

/// <summary>Works side by side, on as many threads as there are.</summary>
internal static class Together
{
    /// <summary>
    /// Runs all to their ends. Of several troubles a defect is thrown before trouble with files, then the first in the order of
    /// the works, so that the same run fails in the same way every time.
    /// </summary>
    public static void Run(params Action[] works)
    {
        var troubles = new Exception?[works.Length];
        Parallel.For(0, works.Length, i =>
        {
            try
            {
                works[i]();
            }
            catch (Exception trouble)
            {
                troubles[i] = trouble;
            }
        });
        var first = troubles.OfType<Exception>().OrderBy(t => t is IOException or UnauthorizedAccessException).FirstOrDefault();
        if (first is not null)
        {
            ExceptionDispatchInfo.Capture(first).Throw();
        }
    }
}
