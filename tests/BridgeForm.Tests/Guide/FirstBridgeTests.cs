using System.Text;
using BridgeForm.Roles;
using BridgeForm.Tests.Output.Preview;
using BridgeForm.Tests.Samples;
using static BridgeForm.Tests.Guide.FirstBridgeStep;

namespace BridgeForm.Tests.Guide;

/// <summary>
/// docs/first-bridge.md is what these steps print when they are run, so that it cannot say what the program does not. Alone,
/// for the steps name their files as a person does, and so need a folder to be in.
/// </summary>
[Collection(AloneGroup.Name)]
public sealed class FirstBridgeTests
{
    private const string Head = """
        # Your first bridge

        From a computer with nothing on it to a bridge that passes its checks, with its picture open: about ten minutes, most of them for downloads. Every command here was run, and what it answered is printed as it came (a test runs them again and compares).

        ## What you need

        The .NET 10 SDK, and this repository. Nothing else; a network only for the first build.

        | on | do |
        |---|---|
        | Windows | take ".NET 10 SDK" for Windows from the download page of .NET, run the installer, open a new PowerShell |
        | a Mac | take ".NET 10 SDK" for macOS there (Arm64 for an M chip, x64 for an older Mac), run the installer, open a new Terminal |
        | Linux | install the package `dotnet-sdk-10.0` of your system, or of the package feed that the download page of .NET names for it |

        Ask it whether it is there; it answers with a number that begins with `10.`:

        ```sh
        dotnet --version
        ```

        Then open the folder of this repository in that window: `cd` and the folder's name. All commands below are given there, and are the same on all three systems. The first one takes a minute or two, since it builds the program; later ones take seconds.

        With a finished program in place of the SDK ([install.md](install.md)), write `bridgeform` wherever this page has `dotnet run --project src/BridgeForm.Cli --`.

        """;

    private const string Tail = """

        Open the picture: `bridge-out/preview.html`, by a double click, or

        | on | type |
        |---|---|
        | Windows | `start bridge-out\preview.html` |
        | a Mac | `open bridge-out/preview.html` |
        | Linux | `xdg-open bridge-out/preview.html` |

        It says in one sentence what the checks come to, shows the bridge, lets you stand on it, and unfolds every formula under its sentence ([preview.md](preview.md)).

        ## Where to go on

        What every word means: [bridge.md](bridge.md). Every key of the file: [project-file.md](project-file.md), and what it may name: [tables.md](tables.md). What each file in `bridge-out` is for: [outputs.md](outputs.md). In reading order: [README.md](README.md).


        """;

    private static readonly FirstBridgeStep[] s_steps =
    [
        new("Begin with a file",
            "A bridge is one text file. This writes one to begin from, in which every line says what it is for, and beside it the schema "
            + "by which editors complete it, and a sheet to take along to the site, `survey.pdf`.",
            Command($"start {FileName}")),
        new("Ask whether it holds",
            "On one screen: the verdict, ten figures, what fails with its cure, what to review, and what to do next.",
            Command($"check {FileName}")),
        new("Ask why",
            "Each check has an id, in round brackets. `--explain` shows one of them with its formula, the numbers of your bridge and the "
            + "source.",
            Command($"check {FileName} --explain guard-post")),
        new("Change it",
            "Open the file in any editor. Lengths carry their unit. Frames further apart, say, leave the boards between them too weak: the "
            + "check fails, and its line says how far it is from holding.",
            All(Changed("frames.spacing", "48 in"), Failing($"check {FileName}"))),
        new("Ask for a way out",
            "`propose` looks for designs that pass, a whole bridge and all its checks each time, and says why each value is what it is. It "
            + "changes nothing unless asked: `--write 1 better.yaml` writes the first way into a new file.",
            Command($"propose {FileName}")),
        new("Change it back",
            "With the frames as they were nothing fails again. The bridge gets its own name on the way; here is how the answer begins.",
            All(Changed("frames.spacing", "34 in"), Changed("name", "Over the brook"), Beginning($"check {FileName}"))),
        new("Or begin with the site",
            "Who knows the span, the rise and who will walk there gets a design looked for. The file that comes out is short: what differs "
            + "from the defaults, each line with its reason.",
            All(Command("start path.yaml --span \"26 ft\" --rise \"1 ft\""), Shown("path.yaml"))),
        new("Make everything",
            "Pictures, drawings, templates, cut list, rope marks: all of it goes into one folder.",
            Command($"make {FileName}")),
    ];

    [Fact]
    public void The_committed_page_is_what_its_steps_print()
    {
        var path = Path.Combine(Sample.Root, "docs", "first-bridge.md");
        var page = Page();
        if (Sample.Updating)
        {
            File.WriteAllText(path, page);
        }

        Assert.Equal(page, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Page()
    {
        var (here, folder) = (Environment.CurrentDirectory, Directory.CreateTempSubdirectory("bridgeform-first-"));
        try
        {
            Environment.CurrentDirectory = folder.FullName;
            var page = new StringBuilder(Head);
            for (var i = 0; i < s_steps.Length; i++)
            {
                page.Append(FormattableString.Invariant($"\n## {i + 1}. {s_steps[i].Title}\n\n{s_steps[i].Words}\n\n"));
                page.Append(s_steps[i].Run().TrimEnd()).Append('\n');
            }

            Assert.True(File.Exists(Path.Combine("bridge-out", "preview.html")));
            return page.Append(Tail).Append("> **Caution.** ").Append(Caution.Text).Append('\n').ToString();
        }
        finally
        {
            Environment.CurrentDirectory = here;
            folder.Delete(recursive: true);
        }
    }
}
