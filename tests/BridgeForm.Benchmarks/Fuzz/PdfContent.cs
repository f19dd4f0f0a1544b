using System.IO.Compression;
using System.Text;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>The streams of a PDF that draw pages, unpacked.</summary>
internal static class PdfContent
{
    private const int ZlibHeader = 2;
    private const int Beginning = 64;

    /// <summary>Streams that begin in plain characters; fonts and their like do not.</summary>
    public static IEnumerable<string> Of(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        for (
            var at = text.IndexOf("stream\n", StringComparison.Ordinal); at >= 0; at = text.IndexOf(
                "stream\n", at + 1, StringComparison.Ordinal))
        {
            if (text.AsSpan(0, at).EndsWith("end"))
            {
                continue;
            }

            var unpacked = Unpacked(pdf, at + "stream\n".Length);
            if (unpacked.Length > 0 && unpacked.Take(Beginning).All(c => c is '\n' or '\r' or (>= ' ' and <= '~')))
            {
                yield return unpacked;
            }
        }
    }

    private static string Unpacked(byte[] pdf, int from)
    {
        try
        {
            // Not the zlib stream: its check sum is judged by the tests of PDF.
            using var packed = new DeflateStream(
                new MemoryStream(pdf, from + ZlibHeader, pdf.Length - from - ZlibHeader), CompressionMode.Decompress);
            using var unpacked = new MemoryStream();
            packed.CopyTo(unpacked);
            return Encoding.Latin1.GetString(unpacked.ToArray());
        }
        catch (InvalidDataException)
        {
            return "";
        }
    }
}
