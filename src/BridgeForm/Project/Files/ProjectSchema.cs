using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Quantities;

namespace BridgeForm.Project.Files;

/// <summary>The JSON schema of the project file, for editors that complete and check while one types.</summary>
public static class ProjectSchema
{
    private const string RopePattern =
        "^(strand-ehs|rope-6x19-iwrc-ips|rope-6x19-iwrc-eips|cord-7x19)(-galvanized)?-[0-9]+(-[0-9]+)?(/[0-9]+)?$";

    /// <summary>JSON Schema, draft 2020-12, with lines ended by a line feed. The same text each time.</summary>
    public static string Json()
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "BridgeForm project file");
            Key(json, ProjectKeys.Root);
            Definitions(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Definitions(Utf8JsonWriter json)
    {
        json.WriteStartObject("$defs");
        foreach (var kind in Enum.GetValues<QuantityKind>())
        {
            json.WriteStartObject(Name(kind));
            json.WriteString("type", "string");
            json.WriteString("pattern", QuantityPattern.Of(kind));
            json.WriteEndObject();
        }

        json.WriteStartObject("section");
        json.WriteString("type", "string");
        json.WriteString("pattern", QuantityPattern.Section);
        json.WriteStartArray("examples");
        foreach (var name in Lumber.Names)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static string Name(QuantityKind kind) => char.ToLowerInvariant(kind.ToString()[0]) + kind.ToString()[1..];

    // Writes what stands inside the braces of one key's schema.
    private static void Key(Utf8JsonWriter json, KeySpec spec)
    {
        json.WriteString("description", ProjectReference.Describe(spec));
        if (spec is { Shape: KeyShape.Value, Default: { } value, Type: not (ValueForm.Whole or ValueForm.Number or ValueForm.Flag) })
        {
            json.WriteString("default", value);
        }

        switch (spec.Shape)
        {
            case KeyShape.Map:
                Map(json, spec);
                break;
            case KeyShape.Named:
                json.WriteString("type", "object");
                NamesOf(json, spec);
                Nested(json, "additionalProperties", spec.Item!);
                break;
            case KeyShape.List:
                json.WriteString("type", "array");
                json.WriteNumber("minItems", spec.Count.Least);
                json.WriteNumber("maxItems", spec.Count.Most);
                Nested(json, "items", spec.Item!);
                break;
            default:
                Value(json, spec);
                break;
        }
    }

    private static void Nested(Utf8JsonWriter json, string name, KeySpec spec)
    {
        json.WriteStartObject(name);
        Key(json, spec);
        json.WriteEndObject();
    }

    private static void Map(Utf8JsonWriter json, KeySpec spec)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        Strings(json, "required", spec.Keys.Where(k => k is { Required: true, Instead: null }).Select(k => k.Name));
        if (spec.Keys.FirstOrDefault(k => k.Instead is not null) is { } either)
        {
            json.WriteStartArray("anyOf");
            foreach (var name in (string[])[either.Name, either.Instead!])
            {
                json.WriteStartObject();
                Strings(json, "required", [name]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (spec.OneOf.Length > 0)
        {
            json.WriteStartObject("not");
            Strings(json, "required", spec.OneOf);
            json.WriteEndObject();
        }

        json.WriteStartObject("properties");
        foreach (var key in spec.Keys)
        {
            Nested(json, key.Name, key);
        }

        json.WriteEndObject();
    }

    private static void NamesOf(Utf8JsonWriter json, KeySpec spec)
    {
        if (spec.Choices.Length > 0)
        {
            json.WriteStartObject("propertyNames");
            Strings(json, "enum", spec.Choices);
            json.WriteEndObject();
        }
    }

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        var list = values.ToList();
        if (list.Count == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        list.ForEach(json.WriteStringValue);
        json.WriteEndArray();
    }

    private static void Value(Utf8JsonWriter json, KeySpec spec)
    {
        switch (spec.Type)
        {
            case ValueForm.Choice:
                Strings(json, "enum", spec.Choices);
                break;
            case ValueForm.Whole or ValueForm.Number:
                Number(json, spec);
                break;
            case ValueForm.Flag:
                json.WriteString("type", "boolean");
                break;
            case ValueForm.Section:
                json.WriteString("$ref", "#/$defs/section");
                break;
            case ValueForm.Quantity:
                Quantity(json, spec);
                break;
            case ValueForm.Rope:
                Rope(json, spec);
                break;
            default:
                // YAML reads a name such as 12 as a number; as a text it is as good as any.
                Strings(json, "type", ["string", "number"]);
                break;
        }
    }

    private static void Quantity(Utf8JsonWriter json, KeySpec spec)
    {
        if (spec.Kinds.Length == 1)
        {
            json.WriteString("$ref", "#/$defs/" + Name(spec.Kinds[0]));
            return;
        }

        json.WriteStartArray("anyOf");
        foreach (var kind in spec.Kinds)
        {
            json.WriteStartObject();
            json.WriteString("$ref", "#/$defs/" + Name(kind));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, KeySpec spec)
    {
        if (spec.Choices.Length == 0)
        {
            Bounds(json, spec);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        Bounds(json, spec);
        json.WriteEndObject();
        json.WriteStartObject();
        Strings(json, "enum", spec.Choices);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Bounds(Utf8JsonWriter json, KeySpec spec)
    {
        json.WriteString("type", spec.Type == ValueForm.Whole ? "integer" : "number");
        json.WritePropertyName("minimum");
        json.WriteRawValue(spec.Least!);
        json.WritePropertyName("maximum");
        json.WriteRawValue(spec.Most!);
    }

    private static void Rope(Utf8JsonWriter json, KeySpec spec)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", RopePattern);
        json.WriteEndObject();
        json.WriteStartObject();
        Map(json, spec);
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
