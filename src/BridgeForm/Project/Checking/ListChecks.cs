using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project.Checking;

/// <summary>Lists and ranges in order: ground line, stretch, load cases.</summary>
internal static class ListChecks
{
    public static void Run(CheckedFile f)
    {
        Ground(f);
        if (f.Values.NumberOrNull("ropes.stretch.0") > f.Values.NumberOrNull("ropes.stretch.1"))
        {
            f.Stop("ropes.stretch.1", "stretch: the range runs from low to high; swap its two shares");
        }

        var seen = new HashSet<string>(LoadCaseIds.All, StringComparer.OrdinalIgnoreCase);
        foreach (var path in f.Values.Items("loads.cases"))
        {
            Case(f, path, seen);
        }
    }

    private static void Ground(CheckedFile f)
    {
        var last = double.NegativeInfinity;
        foreach (var point in f.Values.Items("site.ground").Where(p => f.Good(p)))
        {
            var x = f.Values.Number(point + ".0");
            if (x <= last)
            {
                f.Stop(point + ".0", $"ground: '{f.Written(point + ".0")}' does not lie beyond the point before it; list points from A towards B");
            }

            last = x;
        }
    }

    private static string Free(string id, HashSet<string> taken)
    {
        var n = 2;
        while (taken.Contains(FormattableString.Invariant($"{id}-{n}")))
        {
            n++;
        }

        return FormattableString.Invariant($"{id}-{n}");
    }

    private static void Case(CheckedFile f, string path, HashSet<string> seen)
    {
        if (f.Values.TextOrNull(path + ".id") is { } id && !seen.Add(id))
        {
            f.Stop(path + ".id", $"{QuantityReader.Quote(id)} names another load case already; write an id of its own, such as {QuantityReader.Quote(Free(id, seen))}");
        }

        if (!f.Good("site.span"))
        {
            return;
        }

        var span = f.Parameters.Site.Span;
        foreach (var key in new[] { ".from", ".to", ".at" })
        {
            if (f.Values.NumberOrNull(path + key) > span + CheckedFile.RoundOff)
            {
                f.Stop(path + key, $"{key[1..]}: '{f.Written(path + key)}' lies beyond support B; the span is {f.Length(span)}");
            }
        }

        if (f.Values.NumberOrNull(path + ".from") >= (f.Values.NumberOrNull(path + ".to") ?? span))
        {
            f.Stop(path + ".from", $"from: '{f.Written(path + ".from")}' must be nearer to A than where the load ends");
        }
    }
}
