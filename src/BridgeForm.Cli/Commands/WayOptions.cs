using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary><c>--write N OUT.yaml</c> and <c>--in-place</c>: one of the ways that were found as a project file.</summary>
internal sealed class WayOptions
{
    private const int MostWays = 3;

    private readonly Option<string[]> _write = new("--write")
    {
        Description = "write the Nth way as OUT.yaml, with the comments, order and spelling of FILE",
        HelpName = "N OUT.yaml",
        Arity = new ArgumentArity(1, 2),
        AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<bool> _inPlace = new("--in-place")
    {
        Description = "with --write N: write it over FILE, which is kept beside as FILE.bak",
    };

    public WayOptions() => _write.Validators.Add(Check);

    /// <summary>Puts them on a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(_write);
        command.Add(_inPlace);
    }

    /// <summary>Whether one is to be written.</summary>
    public bool IsAsked(ParseResult parsed) => parsed.GetResult(_write) is { Implicit: false };

    /// <summary>Stops before a long search when what it finds could not be written.</summary>
    public void Demand(ParseResult parsed, string file)
    {
        var (asked, inPlace) = (parsed.GetValue(_write) ?? [], parsed.GetValue(_inPlace));
        var problem = (asked, inPlace) switch
        {
            ([], true) => "--in-place: say which way, as --write 1 --in-place",
            ([_], false) => "--write: name a file to write as well, as --write 1 better.yaml, or add --in-place",
            ([_, _], true) => "--in-place: FILE itself is written; name no other file with --write",
            ([_, var target], false) when WholeFile.Is(target, [file]) =>
                $"{PlainLine.Of(target)}: the bridge is read from this file; name another one, or write --write {asked[0]} --in-place",
            _ => null,
        };
        if (problem is not null)
        {
            throw new Stop(ExitCode.WrongInput, "bridgeform: error: " + problem);
        }

        if (asked is [_, var path] && (File.Exists(path) || Directory.Exists(path)))
        {
            throw new Stop(ExitCode.FileTrouble, $"{PlainLine.Of(path)}: error: this is there already; name another file");
        }
    }

    /// <summary>Writes the way that was asked for, if any.</summary>
    /// <param name="terminal">Told what was written.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="file">The project file.</param>
    /// <param name="searched">Its text when the search began.</param>
    /// <param name="result">What was found.</param>
    public void Write(Terminal terminal, ParseResult parsed, string file, string searched, SearchResult result)
    {
        if (parsed.GetValue(_write) is not [var number, ..] asked)
        {
            return;
        }

        var way = int.Parse(number, CultureInfo.InvariantCulture);
        if (way > result.Proposals.Length)
        {
            throw new Stop(
                ExitCode.WrongInput,
                FormattableString.Invariant($"bridgeform: error: --write: there is no way {way}, only ")
                    + FormattableString.Invariant($"{result.Proposals.Length}; nothing is written"));
        }

        if (!string.Equals(ProjectSource.TextOf(file), searched, StringComparison.Ordinal))
        {
            throw new Stop(
                ExitCode.FileTrouble,
                $"{PlainLine.Of(file)}: error: it was changed while the search ran; nothing is written: run the search again");
        }

        var text = ProposalFile.Written(searched, result.Proposals[way - 1]);
        var target = asked.Length > 1 ? asked[1] : file;
        var kept = asked.Length > 1 ? null : Kept(file);
        WholeFile.Write(target, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        terminal.Out.WriteLine(
            $"{PlainLine.Of(target)} written, way {number}; check it as any other file"
                + (kept is null ? "." : $"; what was there is kept as {PlainLine.Of(kept)}."));
    }

    // Beside it, under a name that is free.
    private static string Kept(string file)
    {
        var name = file + ".bak";
        for (var n = 2; File.Exists(name) || Directory.Exists(name); n++)
        {
            name = FormattableString.Invariant($"{file}.bak{n}");
        }

        WholeFile.Write(name, stream => stream.Write(File.ReadAllBytes(file)));
        return name;
    }

    private static void Check(OptionResult result)
    {
        if (result.Tokens.Count > 0 && (!int.TryParse(
            result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var way) || way is < 1 or > MostWays))
        {
            result.AddError($"--write: {QuantityReader.Quote(result.Tokens[0].Value)} is no way; write 1, 2 or 3, and a file");
        }
    }
}
