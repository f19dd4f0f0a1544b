using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>What stands under a key.</summary>
public enum KeyShape
{
    /// <summary>One value.</summary>
    Value,

    /// <summary>A mapping with the keys of <see cref="KeySpec.Keys"/>.</summary>
    Map,

    /// <summary>
    /// A mapping whose keys are the user's own names, or names of <see cref="KeySpec.Choices"/>, each with an
    /// <see cref="KeySpec.Item"/>.
    /// </summary>
    Named,

    /// <summary>A list, each entry an <see cref="KeySpec.Item"/>.</summary>
    List,
}

/// <summary>What a single value is.</summary>
public enum ValueForm
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>One of <see cref="KeySpec.Choices"/>.</summary>
    Choice,

    /// <summary>A whole number, or one of <see cref="KeySpec.Choices"/>.</summary>
    Whole,

    /// <summary>A number without a unit.</summary>
    Number,

    /// <summary><c>true</c> or <c>false</c>.</summary>
    Flag,

    /// <summary>A section of lumber.</summary>
    Section,

    /// <summary>A quantity of one of <see cref="KeySpec.Kinds"/>.</summary>
    Quantity,

    /// <summary>A key of the rope table; a mapping with <see cref="KeySpec.Keys"/> may stand in its place.</summary>
    Rope,
}

/// <summary>
/// Everything there is to know about one key of the project file. The reader, the JSON schema, the starter file and the
/// reference page are all made from it.
/// </summary>
/// <param name="Name">The key; empty for entries of lists and named mappings.</param>
/// <param name="Shape">What stands under it.</param>
/// <param name="Description">One line for people, without a full stop.</param>
public sealed record KeySpec(string Name, KeyShape Shape, string Description)
{
    /// <summary>What a single value is.</summary>
    public ValueForm Type { get; init; }

    /// <summary>Kinds of quantity that may be written, the first one in schema and range.</summary>
    public ImmutableArray<QuantityKind> Kinds { get; init; } = [];

    /// <summary>Words that may be written; under a named mapping the only names it takes, none for any name.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>What is allowed in words, where two values of one unit cannot say it; null for most.</summary>
    public string? RangeInWords { get; init; }

    /// <summary>Least value allowed, as people write it; null for none.</summary>
    public string? Least { get; init; }

    /// <summary>Largest value allowed, as people write it; null for none.</summary>
    public string? Most { get; init; }

    /// <summary>What a file without the key gets, as people write it (YAML for lists and named mappings); null for nothing.</summary>
    public string? Default { get; init; }

    /// <summary>The default of a metric file where it differs.</summary>
    public string? MetricDefault { get; init; }

    /// <summary>In words, for a default that is worked out from other keys.</summary>
    public string? DefaultNote { get; init; }

    /// <summary>The default is worked out from other values, by a rule that <see cref="DefaultNote"/> says in words.</summary>
    public bool ByRule { get; init; }

    /// <summary>In a few words, what such a default follows.</summary>
    public string? Follows { get; init; }

    /// <summary>A value to show where there is no default; for required keys.</summary>
    public string? Example { get; init; }

    /// <summary>The example of a metric file where it differs.</summary>
    public string? MetricExample { get; init; }

    /// <summary>The file must have it.</summary>
    public bool Required { get; init; }

    /// <summary>Name of a key beside it that stands in for it where it is required; null for none.</summary>
    public string? Instead { get; init; }

    /// <summary>A mapping that, when left out, stands for nothing at all instead of for its keys' defaults.</summary>
    public bool Optional { get; init; }

    /// <summary>Part of the file that a beginner starts from.</summary>
    public bool InStarter { get; init; }

    /// <summary>Keys of a mapping.</summary>
    public ImmutableArray<KeySpec> Keys { get; init; } = [];

    /// <summary>Names of keys in <see cref="Keys"/> that exclude each other; the default of the first holds when none is given.</summary>
    public ImmutableArray<string> OneOf { get; init; } = [];

    /// <summary>What each entry of a list or named mapping is.</summary>
    public KeySpec? Item { get; init; }

    /// <summary>Least and largest number of entries of a list.</summary>
    public (int Least, int Most) Count { get; init; } = (0, 1000);

    /// <summary>What to write, with an example, where what a share asks for is not meant; null where its kind says it.</summary>
    public string? Wanted { get; init; }

    /// <summary>The default in a system of units.</summary>
    public string? DefaultIn(UnitSystem units) => units == UnitSystem.Metric ? MetricDefault ?? Default : Default;

    /// <summary>The example in a system of units.</summary>
    public string? ExampleIn(UnitSystem units) => units == UnitSystem.Metric ? MetricExample ?? Example : Example;
}
