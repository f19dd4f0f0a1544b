using System.Text.Json;

namespace BridgeForm.Tests.Output.Live;

/// <summary>Reads what the live page is told.</summary>
internal static class Told
{
    public static JsonElement Read(byte[] json)
    {
        using var document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }

    public static List<JsonElement> List(this JsonElement element, string name) => [.. element.GetProperty(name).EnumerateArray()];

    public static string Text(this JsonElement element, string name) => element.GetProperty(name).GetString()!;

    public static double Number(this JsonElement element, string name) => element.GetProperty(name).GetDouble();

    public static List<string> Texts(this JsonElement element, string name) => [.. element.List(name).Select(t => t.GetString()!)];

    /// <summary>The one of a list whose property has a value.</summary>
    public static JsonElement One(this JsonElement element, string list, string name, string value) =>
        Assert.Single(element.List(list), e => string.Equals(e.Text(name), value, StringComparison.Ordinal));

    /// <summary>A fault as the command line prints it.</summary>
    public static string Line(JsonElement fault, string file) =>
        $"{file}:{fault.GetProperty("line").GetInt32()}:{fault.GetProperty("column").GetInt32()}: error: {fault.Text("message")} "
            + $"[{fault.Text("code")}]";
}
