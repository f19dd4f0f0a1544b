using System.Collections.Immutable;
using System.CommandLine;
using BridgeForm.Checks;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Files.Commit;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Output.Kinds;
using BridgeForm.Output.ScaleModel;
using BridgeForm.Output.Templates;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Cli.Commands;

/// <summary><c>make [FILE]</c>: builds the model and writes its files.</summary>
internal static class MakeCommand
{
    private const string DemoFolder = "demo-out";

    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal, Option<bool> quiet)
    {
        var file = new Argument<string?>("FILE")
        {
            Description = "project file; without one the bundled demo is made into ./" + DemoFolder,
            Arity = ArgumentArity.ZeroOrOne,
        };
        var folder = new Option<string?>("--output", "-o")
        {
            Description = "folder for the files; by default FILE's name without its ending + -out, beside FILE",
            HelpName = "DIR",
        };
        var only = new Option<string?>("--only")
        {
            Description = "make just these, separated by commas: " + string.Join(", ", AskedKinds.Names)
                + "; without it all but " + string.Join(", ", AskedKinds.Names.Except(OutputKinds.Usual, StringComparer.Ordinal)),
            HelpName = "KIND,…",
        };
        only.CompletionSources.Add(context => AskedKinds.After(context.WordToComplete));
        var templates = new Option<string?>("--templates")
        {
            Description = "print more templates than are needed: all, or those of pieces by their marks, separated by commas",
            HelpName = "all|MARK,…",
        };
        templates.CompletionSources.Add(AskedTemplates.Everything);
        file.Validators.Add(PathText.Check);
        folder.Validators.Add(PathText.Check);
        var command = new Command("make", "Build the model and write its files") { file, folder, only, templates };
        command.SetAction(parsed => Make(
            terminal,
            parsed.GetValue(quiet),
            parsed.GetValue(file),
            parsed.GetValue(folder),
            parsed.GetValue(only),
            AskedTemplates.Parse(parsed.GetValue(templates))));
        return command;
    }

    private static int Make(Terminal terminal, bool quiet, string? file, string? folder, string? only, TemplateChoice templates)
    {
        var kinds = AskedKinds.Parse(only);
        var target = folder ?? (file is null ? DemoFolder : Path.ChangeExtension(file, null) + "-out");
        PlaceTrouble.Writing(target, () => FolderEntry.Recover(target));
        using var progress = terminal.Progress(quiet);
        var reading = file is null ? ProjectSource.Demo() : ProjectSource.Read(file);
        var model = ModelSource.Build(reading, progress);
        AskedTemplates.Check(templates, model);
        var (count, kept) = PlaceTrouble.Writing(
            target, () => Write(model, kinds, templates, target, ProjectSource.FilesOf(file, reading.Parameters!), progress));
        progress.Dispose();
        foreach (var (name, now) in kept)
        {
            terminal.Error.WriteLine(
                $"{PlainLine.Of(Path.Combine(target, name))} was there and was not made by this program; it is kept as {now}");
        }

        NameFailures(terminal, model);
        if (!quiet)
        {
            terminal.Out.WriteLine($"{model.Parameters.Name}: {model.Pieces.Length} pieces, {model.Pieces.Sum(p => p.Occurrences.Length)} "
                + $"parts; {count} files in {PlainLine.Of(target)}");
            if (kinds.Contains(OutputKinds.ScaleModel))
            {
                NameThickened(terminal, model);
            }

            terminal.Out.WriteLine(Caution.Text);
        }

        VerdictText.Write(terminal.Out, terminal.Error, model, quiet);

        return ExitCode.Done;
    }

    /// <summary>How many files were written, the manifest among them, and what of the user's has another name now.</summary>
    private static (int Count, ImmutableArray<(string Name, string Now)> Kept) Write(
        BridgeModel model,
        ImmutableHashSet<string> kinds,
        TemplateChoice templates,
        string target,
        IEnumerable<string> sources,
        Progress progress)
    {
        using var output = new OutputFolder(target, kinds, sources);
        OutputFiles.Write(model, kinds, templates, output, progress);
        output.Commit();
        return (output.Names.Count + 1, output.Kept);
    }

    /// <summary>What of the model to print is not to scale: whoever prints it may never open its table.</summary>
    private static void NameThickened(Terminal terminal, BridgeModel model)
    {
        foreach (var sentence in ScaleModelTable.Told(model))
        {
            terminal.Out.WriteLine("scale-model: " + sentence);
        }
    }

    private static void NameFailures(Terminal terminal, BridgeModel model)
    {
        foreach (var check in model.Checks.Where(c => c.Status == CheckStatus.Fail))
        {
            terminal.Error.WriteLine($"check fails: {check.Id}: {check.Title}: {check.Detail}");
        }
    }
}

/// <summary>Kinds of files that <c>make --only</c> takes.</summary>
internal static class AskedKinds
{
    /// <summary>All kinds that this version makes, in the order they are written.</summary>
    public static ImmutableArray<string> Names { get; } = OutputKinds.Words;

    /// <summary>How a list that was begun may go on: what stands before its last comma, and each kind that is not in it.</summary>
    public static IEnumerable<string> After(string begun) => After(Names, begun);

    /// <summary>The same of any words.</summary>
    public static IEnumerable<string> After(IEnumerable<string> words, string begun)
    {
        var before = begun[..(begun.LastIndexOf(',') + 1)];
        var named = before.Split(',');
        return words.Where(n => !named.Contains(n, StringComparer.Ordinal)).Select(n => before + n);
    }

    /// <summary>The kinds of a comma-separated list; the usual ones when there is none. Stops at a word that is no kind.</summary>
    public static ImmutableHashSet<string> Parse(string? list)
    {
        if (list is null)
        {
            return [.. OutputKinds.Usual];
        }

        var words = list.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var word in words)
        {
            if (!Names.Contains(word, StringComparer.Ordinal))
            {
                throw new Stop(
                    ExitCode.WrongInput,
                    $"bridgeform: error: --only: '{word}' is nothing this version makes; it makes {string.Join(", ", Names)}");
            }
        }

        return words.Length > 0
            ? [.. words]
            : throw new Stop(ExitCode.WrongInput, $"bridgeform: error: --only: name one or more of {string.Join(", ", Names)}");
    }
}
