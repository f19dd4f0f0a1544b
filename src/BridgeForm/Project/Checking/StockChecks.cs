using BridgeForm.Materials;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Checking;

/// <summary>Names of stock and species that exist, densities in order.</summary>
internal static class StockChecks
{
    private static readonly string[] Users =
    [
        "frames.base.stock",
        "frames.post.stock",
        "frames.brace.stock",
        "deck.board.stock",
        "deck.stringer.stock",
        "guard.rails.stock",
        "guard.cap.stock",
    ];

    public static void Run(CheckedFile f)
    {
        if (f.Good("stock"))
        {
            foreach (var path in Users)
            {
                Named(f, path);
            }
        }

        foreach (var item in f.Values.Items("stock").Concat(f.Values.Items("species")))
        {
            Density(f, item + ".density");
        }

        foreach (var row in f.Values.Items("values"))
        {
            Row(f, row);
        }
    }

    private static void Named(CheckedFile f, string path)
    {
        var unused = f.Parameters.Deck.Layout == DeckLayout.Along && path.StartsWith("deck.stringer", StringComparison.Ordinal);
        var names = f.Values.Names("stock");
        var name = f.Written(path);
        if (unused || !f.Good(path) || names.Contains(name, StringComparer.Ordinal))
        {
            return;
        }

        var hint = NearestWord.Of(name, names) is { } nearest ? $"did you mean {nearest}?" : $"there are {(names.Count == 0 ? "none" : string.Join(", ", names))}";
        f.Stop(path, $"{QuantityReader.Quote(name)} is not a name under stock; {hint}", "stock");
    }

    private static void Density(CheckedFile f, string path)
    {
        var (low, inService, high) = (path + ".low", path + ".in_service", path + ".high");
        if (f.Values.NumberOrNull(low) is not { } least || f.Values.NumberOrNull(high) is not { } most)
        {
            return;
        }

        if (most < least)
        {
            f.Stop(high, $"high: '{f.Written(high)}' is less than low, '{f.Written(low)}'");
        }
        else if (f.Values.NumberOrNull(inService) is { } middle && (middle < least || middle > most))
        {
            f.Stop(inService, $"in_service: '{f.Written(inService)}' must lie between low and high, '{f.Written(low)}' to '{f.Written(high)}'");
        }
    }

    private static void Row(CheckedFile f, string row)
    {
        var (species, size) = (row + ".species", row + ".size");
        var known = f.Values.Names("species").Concat(SpeciesTable.All.Select(s => s.Key)).ToList();
        if (f.Values.TextOrNull(species) is { } key && !known.Contains(key, StringComparer.Ordinal))
        {
            var hint = NearestWord.Of(key, known) is { } nearest ? $"did you mean {nearest}?" : "write its key under species: too";
            f.Stop(species, $"{QuantityReader.Quote(key)} is not a species; {hint}");
        }

        var words = new[] { SizeClass.Dimension, SizeClass.Beams, SizeClass.Posts, SizeClass.Timbers };
        if (f.Values.TextOrNull(size) is { } text && !words.Contains(text, StringComparer.Ordinal) && SectionReader.Read(text).Section is null)
        {
            f.Stop(size, $"{QuantityReader.Quote(text)} is not a size; write {string.Join(", ", words)}, or a section such as 2x6");
        }
    }
}
