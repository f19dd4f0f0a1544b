using BridgeForm.Cli;
using BridgeForm.Cli.Streams;
using BridgeForm.Project.Editing;

namespace BridgeForm.Tests.Guide;

/// <summary>One step of the road: its words, and what is run for it in the folder where the person is.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Words">What it does and why, markdown.</param>
/// <param name="Run">What is typed and answered, or changed in the file; as markdown blocks.</param>
internal sealed record FirstBridgeStep(string Title, string Words, Func<string> Run)
{
    /// <summary>What is typed in front of every command: this page goes from a checkout.</summary>
    public const string Program = "dotnet run --project src/BridgeForm.Cli --";

    /// <summary>File that the steps are about.</summary>
    public const string FileName = "bridge.yaml";

    private const int Begun = 10;

    /// <summary>A command that ends well, with all that it answers.</summary>
    public static Func<string> Command(string line) => () => Answered(line, ExitCode.Done, int.MaxValue);

    /// <summary>A check that fails, with all that it answers.</summary>
    public static Func<string> Failing(string line) => () => Answered(line, ExitCode.CheckFails, int.MaxValue);

    /// <summary>A command that ends well, and the beginning of its answer.</summary>
    public static Func<string> Beginning(string line) => () => Answered(line, ExitCode.Done, Begun);

    /// <summary>A value changed in the file, shown as the line that changed.</summary>
    public static Func<string> Changed(string path, string value) => () =>
    {
        var before = File.ReadAllText(FileName);
        var after = FileEdit.Set(before, path, value).Text!;
        File.WriteAllText(FileName, after);
        var (old, now) = before.Split('\n').Zip(after.Split('\n')).Single(l => l.First != l.Second);
        return $"```diff\n- {old.TrimEnd()}\n+ {now.TrimEnd()}\n```\n\n";
    };

    /// <summary>A file as it stands.</summary>
    public static Func<string> Shown(string file) => () => $"```yaml\n{File.ReadAllText(file).TrimEnd()}\n```\n\n";

    /// <summary>One after the other.</summary>
    public static Func<string> All(params Func<string>[] parts) => () => string.Concat(parts.Select(p => p()));

    // As a shell takes them apart: what stands in quotes is one word.
    private static string[] Taken(string line) =>
        [.. line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    private static string Answered(string line, int code, int most)
    {
        using var said = new StringWriter { NewLine = "\n" };
        Assert.Equal(code, Application.Run(Taken(line), said, said, Program));
        var lines = said.ToString().TrimEnd().Split('\n');
        var shown = string.Join('\n', lines.Take(most)) + (lines.Length > most ? "\n…" : "");
        return $"```sh\n{Program} {line}\n```\n\n```text\n{shown}\n```\n";
    }
}
