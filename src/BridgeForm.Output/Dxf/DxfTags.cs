using System.Globalization;
using System.Text;

namespace BridgeForm.Output.Dxf;

/// <summary>Writes the pairs of group code and value that a DXF file is made of, as ASCII with LF line ends.</summary>
internal sealed class DxfTags : IDisposable
{
    /// <summary>Digits behind the point: a millionth of an inch or of a millimetre, far below any tool.</summary>
    private const string NumberFormat = "0.0#####";
    private const int Decimals = 6;
    private const int BufferCharacters = 1 << 14;

    private readonly StreamWriter text;

    /// <summary>Writes to a stream, which stays open.</summary>
    public DxfTags(Stream stream) => text = new StreamWriter(stream, Encoding.ASCII, BufferCharacters, leaveOpen: true) { NewLine = "\n" };

    /// <summary>A string.</summary>
    public void Add(int code, string value)
    {
        Code(code);
        text.WriteLine(value);
    }

    /// <summary>A whole number.</summary>
    public void Add(int code, int value)
    {
        Code(code);
        Span<char> digits = stackalloc char[16];
        _ = value.TryFormat(digits, out var length, default, CultureInfo.InvariantCulture);
        text.WriteLine(digits[..length]);
    }

    /// <summary>A number. Throws <see cref="ArgumentOutOfRangeException"/> when it is not finite.</summary>
    public void Add(int code, double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A drawing needs finite numbers.");
        }

        Code(code);
        Span<char> digits = stackalloc char[64];
        _ = Numbers.Rounded(value, Decimals).TryFormat(digits, out var length, NumberFormat, CultureInfo.InvariantCulture);
        text.WriteLine(digits[..length]);
    }

    /// <summary>A point: x with the code, y with the code plus ten, z (0) with the code plus twenty.</summary>
    public void Point(int code, double x, double y)
    {
        Add(code, x);
        Add(code + 10, y);
        Add(code + 20, 0.0);
    }

    /// <summary>A handle.</summary>
    public void Handle(int code, int handle) => Add(code, HandleText(handle));

    /// <summary>A handle as text.</summary>
    public static string HandleText(int handle) => handle.ToString("X", CultureInfo.InvariantCulture);

    /// <summary>Writes what is still in the buffer.</summary>
    public void Dispose() => text.Dispose();

    private void Code(int code)
    {
        Span<char> digits = stackalloc char[8];
        _ = code.TryFormat(digits, out var length, default, CultureInfo.InvariantCulture);
        text.WriteLine(digits[..length]);
    }
}
