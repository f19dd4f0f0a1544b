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

/// <summary>Handles of everything that is the same in each file; layers and entities follow from fixed numbers on.</summary>
internal static class DxfHandles
{
    public const int Root = 0xC;
    public const int Groups = 0xD;
    public const int ViewportTable = 0x1;
    public const int Viewport = 0x10;
    public const int LinetypeTable = 0x2;
    public const int LinetypeByBlock = 0x11;
    public const int LinetypeByLayer = 0x12;
    public const int LinetypeContinuous = 0x13;
    public const int LayerTable = 0x3;
    public const int StyleTable = 0x4;
    public const int Style = 0x14;
    public const int ViewTable = 0x5;
    public const int UcsTable = 0x6;
    public const int AppIdTable = 0x7;
    public const int AppId = 0x15;
    public const int DimStyleTable = 0x8;
    public const int DimStyle = 0x16;
    public const int BlockRecordTable = 0x9;
    public const int ModelSpace = 0x17;
    public const int PaperSpace = 0x18;
    public const int ModelBlock = 0x19;
    public const int ModelBlockEnd = 0x1A;
    public const int PaperBlock = 0x1B;
    public const int PaperBlockEnd = 0x1C;
    public const int LinetypeDashed = 0x1D;

    /// <summary>Handle of layer 0; further layers follow.</summary>
    public const int FirstLayer = 0x20;

    /// <summary>Handle of the first entity of a file with so many layers besides layer 0.</summary>
    public static int FirstEntity(int layers) => FirstLayer + layers + 1;
}
