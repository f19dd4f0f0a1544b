using System.Text.Json;
using BridgeForm.Output.Gltf;

namespace BridgeForm.Output.Live;

/// <summary>Small ways to write what the live page is told: compact JSON, numbers in full.</summary>
internal static class PageJson
{
    /// <summary>An object's bytes.</summary>
    public static byte[] Object(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, GltfJson.Options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    /// <summary>A list of objects.</summary>
    public static void Objects<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A list of texts.</summary>
    public static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>A text that may be missing.</summary>
    public static void Maybe(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }

    /// <summary>A number that may be missing.</summary>
    public static void Maybe(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value && double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
    }
}
