using System.Globalization;
using BridgeForm.Benchmarks.Fuzz;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Editing;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Project.Editing;

/// <summary>Every single value of a project file, written anew in files of all kinds.</summary>
public sealed class FileEditPropertyTests
{
    private const int KeysOfGenerated = 4;
    private const int Spoiled = 2_000;

    private static int Generated => Minutes.Cases(50, 400);

    public static TheoryData<string> Whole =>
        ["alder-dell", "wren-landing", nameof(Examples.Contract), nameof(OptionalKeyTests.Full), "Starter"];

    [Theory]
    [MemberData(nameof(Whole))]
    public void Every_key_of_a_whole_file(string name)
    {
        var text = name switch
        {
            nameof(Examples.Contract) => Examples.Contract,
            nameof(OptionalKeyTests.Full) => OptionalKeyTests.Full,
            "Starter" => Starter.Text(BridgeForm.Quantities.UnitSystem.Imperial),
            _ => File.ReadAllText(new Sample(name).FileOf("project.yaml")),
        };
        var random = new RandomText(new Random(13));
        var keys = KeysOf(text);
        Assert.InRange(keys.Count, 100, 1000);
        foreach (var (path, spec) in keys)
        {
            Judge(text, path, Value(random, spec));
        }
    }

    [Fact]
    public void Keys_of_generated_files()
    {
        var looked = new HashSet<string>(StringComparer.Ordinal);
        for (var seed = 1; seed <= Generated; seed++)
        {
            var text = RandomProject.Of(seed, 40);
            var random = new RandomText(new Random(seed));
            var keys = KeysOf(text);
            for (var i = 0; i < KeysOfGenerated; i++)
            {
                var (path, spec) = keys[((seed * KeysOfGenerated) + i) % keys.Count];
                looked.Add(path);
                Judge(text, path, Value(random, spec));
            }
        }

        Assert.InRange(looked.Count, 150, 1000);
    }

    [Fact]
    public void Spoiled_files_get_a_text_or_a_reason()
    {
        for (var seed = 1; seed <= Spoiled; seed++)
        {
            var text = ReadCase.Text(seed);
            var (path, spec) = KeysOf("")[seed % KeysOf("").Count];
            var value = Value(new RandomText(new Random(seed)), spec);
            foreach (var result in (EditResult[])[FileEdit.Set(text, path, value, "why"), FileEdit.Remove(text, path)])
            {
                Assert.True((result.Text is null) == (result.Problem is { Length: > 0 }), text);
            }
        }
    }

    private static string Value(RandomText random, KeySpec spec) =>
        spec.Type == ValueForm.Rope ? random.OneOf(RopeTable.Keys) : random.Of(spec);

    private static void Judge(string text, string path, string value)
    {
        var what = $"{path}: {value}\n{text}";
        var result = FileEdit.Set(text, path, value);
        Assert.True(result.Text is not null, $"{result.Problem}: {what}");
        var done = result.Text!;

        Assert.True(Is(done, path, value), what + "\n-->\n" + done);
        Assert.True(FileEdit.Set(done, path, value).Text == done, "twice: " + what);
        var lines = (string t) => "\uFEFF" + t.ReplaceLineEndings("\r\n");
        Assert.True(FileEdit.Set(lines(text), path, value).Text == lines(done), "line ends: " + what);

        var prefix = text.Zip(done).TakeWhile(c => c.First == c.Second).Count();
        var suffix = text[prefix..].Reverse().Zip(done[prefix..].Reverse()).TakeWhile(c => c.First == c.Second).Count();
        var old = text[prefix..^suffix];
        if (OldValue(text, path) is { } before)
        {
            Assert.True(before.Contains(old, StringComparison.Ordinal), $"'{old}' of '{before}' changed: {what}");
            Assert.True(FileEdit.Set(done, path, before).Text == text, "back: " + what);
        }
        else if (!IsCrowdedOut(text, path))
        {
            Assert.True(old.Length == 0, $"'{old}' went: {what}");
            var rest = FileEdit.Remove(done, path).Text;
            Assert.True(WasEmpty(text, path) || rest == text, $"out again: {what}\n-->\n{rest}");
        }
    }

    private static bool Is(string text, string path, string value)
    {
        var entry = ProjectReader.Read(text, "edited.yaml", RopeTable.Catalogue).Values?.Find(path);
        return entry is { Given: true } && (entry.Text == value || entry.Text == value.Trim('"', '\''));
    }

    /// <summary>The value's characters, found by the reader's place alone: values of these files stand on one line.</summary>
    private static string? OldValue(string text, string path)
    {
        var entry = ProjectReader.Read(text, "old.yaml", RopeTable.Catalogue).Values?.Find(path);
        if (entry is not { Given: true })
        {
            return null;
        }

        var line = text.Split('\n')[entry.Place.Line - 1][(entry.Place.Column - 1)..];
        if (line[0] is '"' or '\'')
        {
            return line[..(line.IndexOf(line[0], 1) + 1)];
        }

        if (line[0] is '{')
        {
            return line[..(line.IndexOf('}') + 1)];
        }

        var isFlow = text.Split('\n')[entry.Place.Line - 1][..entry.Place.Column].Any(c => c is '{' or '[');
        var ends = (string[])[" #", .. isFlow ? (string[])[",", "}", "]"] : []];
        return line[..ends.Select(e => line.IndexOf(e, StringComparison.Ordinal)).Where(i => i >= 0).Append(line.Length).Min()].TrimEnd();
    }

    // The key takes another's place, or stands in a rope of one's own where the file names one of the table.
    private static bool IsCrowdedOut(string text, string path)
    {
        var values = ProjectReader.Read(text, "old.yaml", RopeTable.Catalogue).Values!;
        var parts = path.Split('.');
        for (var i = 1; i < parts.Length; i++)
        {
            var above = string.Join('.', parts[..i]);
            var oneOf = ProjectKeys.At(above).OneOf;
            if ((oneOf.Contains(parts[i]) && oneOf.Any(o => o != parts[i] && values.Given(above + "." + o)))
                || (above == "ropes.type" && values.Given(above)))
            {
                return true;
            }
        }

        return false;
    }

    // A list that the file leaves empty goes with its last entry.
    private static bool WasEmpty(string text, string path) => path.Split('.')[..^1].Any(
        name => text.Contains(name + ": []", StringComparison.Ordinal) || text.Contains(name + ": {  }", StringComparison.Ordinal));

    /// <summary>Paths of single values: of the definition, in lists and under names that the file has, else a first one of each.</summary>
    private static List<(string Path, KeySpec Spec)> KeysOf(string text)
    {
        var values = text.Length == 0 ? null : ProjectReader.Read(text, "keys.yaml", RopeTable.Catalogue).Values!;
        return [.. Below(ProjectKeys.Root, "", values)];
    }

    private static IEnumerable<(string Path, KeySpec Spec)> Below(KeySpec spec, string path, FileValues? values)
    {
        var below = path.Length == 0 ? "" : path + ".";
        return spec.Shape switch
        {
            KeyShape.Map => spec.Keys.SelectMany(k => Below(k, below + k.Name, values)),
            KeyShape.Named or KeyShape.List => Names(spec, path, values).SelectMany(n => Below(spec.Item!, below + n, values)),
            _ => spec.Keys.SelectMany(k => Below(k, below + k.Name, values)).Prepend((path, spec)),
        };
    }

    private static IEnumerable<string> Names(KeySpec spec, string path, FileValues? values)
    {
        var there = values?.Find(path) is { Given: true } ? values.Names(path) : [];
        return there.Count > 0 ? there
            : spec.Shape == KeyShape.List ? [0.ToString(CultureInfo.InvariantCulture)]
            : [spec.Choices.IsEmpty ? "own" : spec.Choices[0]];
    }
}
