using System.Collections.Immutable;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Definition;

/// <summary>Short ways to write a <see cref="KeySpec"/>.</summary>
internal static class Define
{
    public static KeySpec Text(string name, string description, string? value = null) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Text, Default = value };

    public static KeySpec Choice(string name, string description, string? value, params string[] choices) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Choice, Default = value, Choices = [.. choices] };

    public static KeySpec Flag(string name, string description, string value) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Flag, Default = value };

    public static KeySpec Whole(string name, string description, string least, string most, string? value = null) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Whole, Least = least, Most = most, Default = value };

    public static KeySpec Number(string name, string description, string least, string most, string? value = null) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Number, Least = least, Most = most, Default = value };

    public static KeySpec Section(string name, string description, string value, string metric) =>
        new(name, KeyShape.Value, description) { Type = ValueForm.Section, Default = value, MetricDefault = metric };

    /// <summary>The key that names the stock a part is cut from.</summary>
    public static KeySpec StockName(string value) => Text("stock", "Name of the stock it is cut from", value);

    public static KeySpec Length(
        string name, string description, string least, string most, string? value = null, string? metric = null) =>
        Quantity(QuantityKind.Length, name, description, least, most, value, metric);

    public static KeySpec Quantity(
        QuantityKind kind, string name, string description, string least, string most, string? value = null, string? metric = null) =>
        new(name, KeyShape.Value, description)
        {
            Type = ValueForm.Quantity,
            Kinds = [kind],
            Least = least,
            Most = most,
            Default = value,
            MetricDefault = metric,
        };

    public static KeySpec Map(string name, string description, params ImmutableArray<KeySpec> keys) =>
        new(name, KeyShape.Map, description) { Keys = keys };

    public static KeySpec OptionalMap(string name, string description, params ImmutableArray<KeySpec> keys) =>
        Map(name, description, keys) with { Optional = true };

    public static KeySpec Named(string name, string description, KeySpec item) =>
        new(name, KeyShape.Named, description) { Item = item };

    public static KeySpec List(string name, string description, KeySpec item, int least = 0, int most = 1000) =>
        new(name, KeyShape.List, description) { Item = item, Count = (least, most) };

    public static KeySpec Needed(this KeySpec key, string example, string? metric = null) =>
        key with { Required = true, Example = example, MetricExample = metric };

    /// <summary>A default that is worked out from other values.</summary>
    /// <param name="key">The key, without a default.</param>
    /// <param name="follows">In a few words, what it follows.</param>
    /// <param name="rule">The rule in words, without a full stop.</param>
    /// <param name="example">A value to show, as people write it.</param>
    /// <param name="metric">The same for a metric file where it differs.</param>
    public static KeySpec ByRule(this KeySpec key, string follows, string rule, string example, string? metric = null) =>
        key with { ByRule = true, Follows = follows, DefaultNote = rule, Example = example, MetricExample = metric };

    public static KeySpec Starting(this KeySpec key) => key with { InStarter = true };

    /// <summary>A mapping with more keys behind its own, which the starter file leaves out.</summary>
    public static KeySpec With(this KeySpec map, params ImmutableArray<KeySpec> keys) => map with { Keys = [.. map.Keys, .. keys] };

    /// <summary>Marks the whole subtree for the starter file.</summary>
    public static KeySpec AllStarting(this KeySpec key) => key with
    {
        InStarter = true,
        Keys = [.. key.Keys.Select(AllStarting)],
    };
}
