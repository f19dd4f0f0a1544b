using System.Globalization;
using System.Text;
using BridgeForm.Checks;
using BridgeForm.Cli.Files;
using BridgeForm.Cli.Streams;
using BridgeForm.Cli.Text;
using BridgeForm.Materials;
using BridgeForm.Project.Files;
using BridgeForm.Proposals;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Cli.Commands;

/// <summary><c>start FILE --span L</c>: looks for a design for a site and writes it as a short file.</summary>
internal static class SiteSearch
{
    /// <summary>Writes the file where a design was found; says why where none was.</summary>
    public static int Run(Terminal terminal, bool quiet, string path, SiteWish wish, SearchAsk ask)
    {
        WholeFile.Demand(path);
        using var progress = terminal.Progress(quiet);
        var site = SiteFile.Text(wish);
        var reading = Read(site);
        var prices = reading.Parameters!.Prices is { } named ? ProjectSource.ReadPrices(named, path, reading.Parameters.Stock) : null;
        var result = Search.Best(reading, prices, ask with
        {
            Looked = count => progress.Say(string.Create(CultureInfo.InvariantCulture, $"{count} designs looked at")),
        });
        progress.Dispose();
        if (result.Proposals.IsEmpty)
        {
            terminal.Error.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"bridgeform: error: nothing that passes was found, of {result.Looked} designs looked at; nothing is written"));
            foreach (var sentence in result.Why)
            {
                Columns.Wrapped(terminal.Error, "- " + sentence, "", "  ");
            }

            return ExitCode.CheckFails;
        }

        var unpriced = ask.Prefer == Preference.Cheap ? result.Proposals[0].Unpriced.ToList() : [];
        var told = unpriced.Count > 0 ? SiteFile.Text(wish with { Wishes = SiteOptions.Unpriced(wish) }) : site;
        var text = SiteFile.Finished(told, result.Proposals[0]);
        var model = Demand(text);
        WholeFile.Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        if (!quiet)
        {
            Tell(terminal, path, result, model);
            if (unpriced.Count > 0)
            {
                Columns.Wrapped(terminal.Out, PriceText.Missing(unpriced), "");
            }
        }

        return ExitCode.Done;
    }

    private static void Tell(Terminal terminal, string path, SearchResult result, BridgeModel model)
    {
        var (output, name, file) = (terminal.Out, terminal.Name, PlainLine.Of(path));
        Columns.Wrapped(output, string.Create(
            CultureInfo.InvariantCulture,
            $"{file} written: the best of {result.Looked} designs looked at, all checks of each; none of its checks fails."), "");
        if (result.Proposals[0].Figures.Price is { } price && model.Parameters.Prices is not null)
        {
            Columns.Wrapped(output, $"The boards cost {NumberText.Fixed(price, 2)} by the price list.", "");
        }

        VerdictText.Write(output, model);
        output.WriteLine();
        KeyFigures.Write(output, model);
        output.WriteLine();
        Columns.Wrapped(output, $"Next: {name} check {file} for its figures, {name} make {file} for its files.", "", "  ");
        Columns.Wrapped(output, Caution.Text, "");
    }

    private static ProjectReading Read(string text)
    {
        var reading = ProjectReader.Read(text, "site", RopeTable.Catalogue);
        return reading.Parameters is not null
            ? reading
            : throw new Stop(ExitCode.WrongInput, reading.Faults.Select(f => "bridgeform: error: " + f.Message));
    }

    // What is written is read and looked at once more, as it stands.
    private static BridgeModel Demand(string text)
    {
        if (!new Rebuild().TryAnswer(Read(text).Parameters!, CancellationToken.None, out var model, out _)
            || !Verdict.IsClear(model.Checks))
        {
            throw new InvalidOperationException("The design that was found does not pass as it was written.");
        }

        return model;
    }
}
