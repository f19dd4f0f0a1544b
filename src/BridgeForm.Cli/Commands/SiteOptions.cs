using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using BridgeForm.Cli.Files;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Proposals;
using BridgeForm.Quantities;

namespace BridgeForm.Cli.Commands;

/// <summary>Options of <c>start</c> that say what a site is like: with a span a design is looked for.</summary>
internal sealed class SiteOptions
{
    private readonly Option<string?> _span = Length("--span", "horizontal distance, support to support; a design for it is looked for");
    private readonly Option<string?> _rise = Length("--rise", "support B above support A, negative below; level without it");
    private readonly Option<string?> _width = Length("--width", "least clear width between the guards");
    private readonly Option<string?> _use = SearchOptions.Among(
        new Option<string?>("--use") { Description = "who walks there", HelpName = "private|public" }, "private", "public");

    private readonly Option<string?> _ground = new("--ground")
    {
        Description = "file with the ground line, a point x,y a line, each with its unit, from support A",
        HelpName = "FILE.csv",
    };

    private readonly Option<string?> _lumber = new("--lumber")
    {
        Description = "sections that your yard sells, separated by commas; by default the common ones",
        HelpName = "2x4,2x6,…",
    };

    private readonly Option<string?> _prices = new("--prices")
    {
        Description = "your price list, with the columns stock,section,length,price; the new file names it",
        HelpName = "FILE.csv",
    };

    private readonly Option<string?> _slope = SearchOptions.Slope();
    private readonly Option<string?> _prefer = SearchOptions.Prefer();

    public SiteOptions() => _lumber.Validators.Add(result => Sections(result));

    /// <summary>Puts them on a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[_span, _rise, _use, _width, _slope, _ground, _lumber, _prices, _prefer])
        {
            command.Add(option);
        }

        command.Validators.Add(NeedsSpan);
    }

    /// <summary>Whether a span was given.</summary>
    public bool IsAsked(ParseResult parsed) => parsed.GetValue(_span) is not null;

    /// <summary>The site.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="path">The file to be written; what it names is named from its folder.</param>
    /// <param name="units">Units of the file.</param>
    public SiteWish Wish(ParseResult parsed, string path, UnitSystem units) => new(parsed.GetValue(_span)!)
    {
        Units = units,
        Rise = parsed.GetValue(_rise),
        Use = parsed.GetValue(_use) is "public" ? BridgeUse.Public : BridgeUse.Private,
        Ground = parsed.GetValue(_ground) is { } ground ? GroundLine.Read(ground) : [],
        Lumber = SearchOptions.Listed(parsed.GetValue(_lumber)),
        Prices = parsed.GetValue(_prices) is { } prices
            ? Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(path))!, Path.GetFullPath(prices)) : null,
        Wishes =
        [
            parsed.GetValue(_prefer) switch
            {
                "flat" => "the flattest deck",
                "cheap" => Cheapest,
                _ => "the least weight",
            },
            .. parsed.GetValue(_slope) is { } slope ? [$"an empty deck no steeper than {slope}"] : Array.Empty<string>(),
            .. parsed.GetValue(_width) is { } width ? [$"at least {width} between the guards"] : Array.Empty<string>(),
        ],
    };

    private const string Cheapest = "the cheapest boards by the price list";

    /// <summary>The wishes where the price list has not every price.</summary>
    public static ImmutableArray<string> Unpriced(SiteWish wish) =>
        [.. wish.Wishes.Select(w => w is Cheapest ? "the least weight, for the price list has not every price" : w)];

    /// <summary>What is wished for beyond the site.</summary>
    public SearchAsk Ask(ParseResult parsed) => new()
    {
        Free = Search.SiteKeys,
        Prefer = SearchOptions.PreferenceOf(parsed.GetValue(_prefer)),
        MostSlope = SearchOptions.SlopeOf(parsed.GetValue(_slope)),
        LeastWidth = parsed.GetValue(_width) is { } width ? QuantityReader.Read(QuantityKind.Length, width).Value : null,
        Run = Together.Run,
    };

    /// <summary>Millimetres and metres make a metric file.</summary>
    public bool IsMetric(ParseResult parsed) => parsed.GetValue(_span)?.TrimEnd().EndsWith('m') ?? false;

    private void NeedsSpan(CommandResult result)
    {
        var others = (Option[])[_rise, _use, _width, _slope, _ground, _lumber, _prices, _prefer];
        if (result.GetValue(_prefer) is "cheap" && result.GetValue(_prices) is null)
        {
            result.AddError("--prefer cheap: name your price list too, with the columns stock,section,length,price: --prices FILE.csv");
        }

        if (result.GetResult(_span) is null && others.FirstOrDefault(o => result.GetResult(o) is { Implicit: false }) is { } lone)
        {
            result.AddError($"{lone.Name}: a design is looked for only with --span; write --span 30 ft as well");
        }
    }

    private static Option<string?> Length(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "L" };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var text }] && QuantityReader.Read(QuantityKind.Length, text).Problem is { } problem)
            {
                result.AddError($"{name}: {problem}; in quotes where there is a space in it: {name} \"36 ft\"");
            }
        });
        return option;
    }

    private static void Sections(OptionResult result)
    {
        foreach (var text in result.Tokens.SelectMany(t => SearchOptions.Listed(t.Value)))
        {
            if (SectionReader.Read(text).Problem is { } problem)
            {
                result.AddError($"--lumber: {problem}");
            }
        }

        if (result.Tokens.All(t => SearchOptions.Listed(t.Value).IsEmpty))
        {
            result.AddError("--lumber: no section is named; write those that your yard sells, as 2x4,2x6,4x4, or leave it out for the "
                + "common ones");
        }
    }
}
