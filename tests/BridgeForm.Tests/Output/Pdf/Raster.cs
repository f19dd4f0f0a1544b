using System.Globalization;
using System.Text;
using BridgeForm.Output.Drawing;
using BridgeForm.Output.Pdf;
using BridgeForm.Tests.Output.Referees;

namespace BridgeForm.Tests.Output.Pdf;

/// <summary>A page rasterised by poppler in shades of grey; lengths are read off it by where the ink is.</summary>
internal sealed class Raster
{
    public const double PixelsPerMetre = 300 / 0.0254;

    private readonly byte[] _file;
    private readonly int _data;

    private Raster(byte[] file)
    {
        _file = file;
        var numbers = new List<int>();
        var at = 0;
        while (numbers.Count < 3)
        {
            var end = at;
            while (file[end] > ' ')
            {
                end++;
            }

            if (int.TryParse(Encoding.ASCII.GetString(file, at, end - at), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                numbers.Add(number);
            }

            at = end + 1;
        }

        (Width, Height, _data) = (numbers[0], numbers[1], at);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>From 0, black, to 255, white.</summary>
    public byte Grey(int pixel) => _file[_data + pixel];

    /// <summary>One page of a book.</summary>
    /// <param name="dotsPerInch">Places read off in metres need those of <see cref="PixelsPerMetre"/>.</param>
    public static Raster Of(SheetBook book, int page = 1, int dotsPerInch = 300)
    {
        Raster? raster = null;
        Referee.OnFile(PdfFile.Bytes(book), "a.pdf", path =>
        {
            var number = page.ToString(CultureInfo.InvariantCulture);
            var stem = Path.ChangeExtension(path, null);
            var dots = dotsPerInch.ToString(CultureInfo.InvariantCulture);
            Referee.Poppler("pdftoppm", "-gray", "-r", dots, "-f", number, "-l", number, "-singlefile", path, stem);
            raster = new Raster(File.ReadAllBytes(stem + ".pgm"));
        });
        return raster!;
    }

    /// <summary>
    /// X of the ink's centre of gravity on the row at <paramref name="y"/>, among pixels no farther than
    /// <paramref name="reach"/> from <paramref name="x"/>; page metres from the lower left corner.
    /// </summary>
    public double InkX(double x, double y, double reach)
    {
        var row = Height - 1 - (int)(y * PixelsPerMetre);
        return Centre((int)((x - reach) * PixelsPerMetre), (int)((x + reach) * PixelsPerMetre), i => _file[_data + (row * Width) + i]);
    }

    /// <summary>Y of the ink's centre of gravity in the column at <paramref name="x"/>.</summary>
    public double InkY(double x, double y, double reach)
    {
        var column = (int)(x * PixelsPerMetre);
        return Centre(
            (int)((y - reach) * PixelsPerMetre), (int)((y + reach) * PixelsPerMetre),
            i => _file[_data + ((Height - 1 - i) * Width) + column]);
    }

    private static double Centre(int from, int to, Func<int, byte> grey)
    {
        double ink = 0, moment = 0;
        for (var i = from; i <= to; i++)
        {
            var dark = 255 - grey(i);
            ink += dark;
            moment += dark * (i + 0.5);
        }

        Assert.True(ink > 0, "There is no ink where a line should be.");
        return moment / ink / PixelsPerMetre;
    }
}

/// <summary>Books as files.</summary>
internal static class PdfFile
{
    public static byte[] Bytes(SheetBook book)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(book, stream);
        return stream.ToArray();
    }
}
