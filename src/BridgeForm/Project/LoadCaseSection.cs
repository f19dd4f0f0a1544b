using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Project;

/// <summary>A load case of the user's.</summary>
public sealed record LoadCaseParameters
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Area load, Pa; 0 for none.</summary>
    public double Live { get; init; }

    /// <summary>Where the area load begins, x in metres; null for support A.</summary>
    public double? From { get; init; }

    /// <summary>Where the area load ends, x in metres; null for support B.</summary>
    public double? To { get; init; }

    /// <summary>Concentrated load, newtons; 0 for none.</summary>
    public double PointForce { get; init; }

    /// <summary>Place of the concentrated load, x in metres; null for mid-span.</summary>
    public double? PointAt { get; init; }

    /// <summary>Temperature, °C; null for the reference temperature.</summary>
    public double? Temperature { get; init; }
}

/// <summary>Keys of an entry of <c>loads.cases</c>, how they are read, what they must agree on.</summary>
internal static class LoadCaseSection
{
    public static KeySpec Keys => Define.Map(
        "",
        "A load case",
        [
            Define.Text("id", "Its name in results").Needed("my-case"),
            LoadSection.Area("live", "Area load"),
            Define.Length("from", "Where the area load begins, from support A", "0 ft", "20000 ft") with { DefaultNote = "support A" },
            Define.Length("to", "Where the area load ends, from support A", "0 ft", "20000 ft") with { DefaultNote = "support B" },
            Define.Quantity(QuantityKind.Force, "force", "Concentrated load", "0 lbf", LoadSection.HeaviestPoint),
            Define.Length("at", "Place of the concentrated load, from support A", "0 ft", "20000 ft") with { DefaultNote = "mid-span" },
            Define.Quantity(
                QuantityKind.Temperature, "temperature", "Temperature", "-60 F",
                "140 F") with { DefaultNote = "the reference temperature" },
        ]);

    public static LoadCaseParameters Read(FileValues v, string path) => new()
    {
        Id = v.Text(path + ".id"),
        Live = v.NumberOrNull(path + ".live") ?? 0,
        From = v.NumberOrNull(path + ".from"),
        To = v.NumberOrNull(path + ".to"),
        PointForce = v.NumberOrNull(path + ".force") ?? 0,
        PointAt = v.NumberOrNull(path + ".at"),
        Temperature = v.NumberOrNull(path + ".temperature"),
    };

    /// <summary>Every case has an id of its own and lies on the bridge.</summary>
    public static void Check(CheckedFile f)
    {
        var seen = new HashSet<string>(LoadCaseIds.All, StringComparer.OrdinalIgnoreCase);
        foreach (var path in f.Values.Items("loads.cases"))
        {
            Check(f, path, seen);
        }
    }

    private static void Check(CheckedFile f, string path, HashSet<string> seen)
    {
        if (f.Values.TextOrNull(path + ".id") is { } id && (!seen.Add(id) || LoadCaseIds.IsTaken(id)))
        {
            f.Stop(FaultCode.CaseIdTaken, path + ".id", $"{QuantityReader.Quote(id)} names another load case already; write an id of its "
                + $"own, such as {QuantityReader.Quote(Free(id, seen))}");
        }

        if (!f.Good("site.span"))
        {
            return;
        }

        var span = f.Parameters.Site.Span;
        foreach (var key in new[] { ".from", ".to", ".at" })
        {
            if (f.Values.NumberOrNull(path + key) > span + Tolerances.RoundOff)
            {
                f.Stop(FaultCode.LoadBeyondBridge, path + key, $"{key[1..]}: '{f.Written(path + key)}' lies beyond support B; the span is "
                    + $"{f.Length(span)}");
            }
        }

        if (f.Values.NumberOrNull(path + ".from") >= (f.Values.NumberOrNull(path + ".to") ?? span))
        {
            f.Stop(FaultCode.LoadReversed, path + ".from", $"from: '{f.Written(path + ".from")}' must be nearer to A than where "
                + "the load ends");
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
}
