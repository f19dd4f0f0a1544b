using System.Globalization;

namespace BridgeForm.Mutation;

/// <summary>What was asked for.</summary>
internal sealed record Options
{
    /// <summary>Places drawn by lot.</summary>
    public int Sites { get; init; } = 160;

    public string Seed { get; init; } = "bridge";

    /// <summary>The listed survivors alone, each against the tests its entry names.</summary>
    public bool SurvivorsOnly { get; init; }

    /// <summary>These numbers alone; empty for all.</summary>
    public IReadOnlyList<int> Only { get; init; } = [];

    /// <summary>Places whose file begins so; empty for all.</summary>
    public string Under { get; init; } = "src/";

    /// <summary>A first look: classes that take no longer than so many seconds together, asked in their order; infinite for all.</summary>
    public double Within { get; init; } = double.PositiveInfinity;

    /// <summary>Only classes of tests whose full name begins so.</summary>
    public string Tests { get; init; } = "BridgeForm.Tests.";

    /// <summary>Where the page goes; null for none.</summary>
    public string? Page { get; init; }

    /// <summary>What the page names as its source.</summary>
    public string Commit { get; init; } = "unknown";

    /// <summary>Counts candidates and stops.</summary>
    public bool Count { get; init; }

    public static Options Of(IReadOnlyList<string> arguments)
    {
        var options = new Options();
        for (var i = 0; i < arguments.Count; i++)
        {
            options = arguments[i] switch
            {
                "--survivors" => options with { SurvivorsOnly = true },
                "--count" => options with { Count = true },
                "--sites" => options with { Sites = int.Parse(arguments[++i], CultureInfo.InvariantCulture) },
                "--within" => options with { Within = double.Parse(arguments[++i], CultureInfo.InvariantCulture) },
                "--seed" => options with { Seed = arguments[++i] },
                "--only" => options with { Only = [.. arguments[++i].Split(',').Select(n => int.Parse(n, CultureInfo.InvariantCulture))] },
                "--under" => options with { Under = arguments[++i] },
                "--commit" => options with { Commit = arguments[++i] },
                "--tests" => options with { Tests = arguments[++i] },
                "--page" => options with { Page = arguments[++i] },
                var other => throw new ArgumentException($"'{other}' is no option of this program", nameof(arguments)),
            };
        }

        return options;
    }
}
