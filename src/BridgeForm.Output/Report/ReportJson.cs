using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using BridgeForm.Ropes;

namespace BridgeForm.Output.Report;

/// <summary>How the report writes lists and numbers.</summary>
internal static class ReportJson
{
    /// <summary>Text is handed on to the stream whenever this much has gathered.</summary>
    private const int FlushBytes = 1 << 16;

    /// <summary>Decimals of an angle in degrees: turning radians into degrees leaves noise in the digits beyond.</summary>
    private const int DegreeDecimals = 10;

    /// <summary>Indented by one, LF line ends, letters of all scripts as they are, safe inside a page's script.</summary>
    public static JsonWriterOptions Options { get; } = new()
    {
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
    };

    /// <summary>A list of anything.</summary>
    public static void List<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
            if (json.BytesPending > FlushBytes)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
    }

    /// <summary>
    /// A number with the fifteen digits that survive arithmetic (3.5 in is 0.0889, not 0.08889999999999999); null where there
    /// is none. Throws <see cref="ArgumentException"/> when not finite.
    /// </summary>
    public static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, Clean(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>An angle given in radians, in degrees; null where there is none.</summary>
    public static void Angle(Utf8JsonWriter json, string name, double? radians) =>
        Number(json, name, radians is { } angle ? Degrees(angle) : null);

    /// <summary>Radians to degrees without noise.</summary>
    public static double Degrees(double radians) => Numbers.Rounded(Numbers.Degrees(radians), DegreeDecimals);

    /// <summary>A point as [x, y] on one line.</summary>
    public static void Pair(Utf8JsonWriter json, RopePoint point) => json.WriteRawValue(
        string.Create(CultureInfo.InvariantCulture, $"[{Clean(point.X):R}, {Clean(point.Y):R}]"));

    /// <summary>The number with the fifteen digits that survive arithmetic.</summary>
    public static double Clean(double value)
    {
        Span<char> digits = stackalloc char[32];
        _ = value.TryFormat(digits, out var length, "G15", CultureInfo.InvariantCulture);
        return double.Parse(digits[..length], NumberStyles.Float, CultureInfo.InvariantCulture) + 0.0;
    }
}
