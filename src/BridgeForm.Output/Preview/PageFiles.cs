using System.Collections.Immutable;
using System.Text;

namespace BridgeForm.Output.Preview;

/// <summary>The page's built files, embedded in the assembly.</summary>
internal static class PageFiles
{
    private const string Open = "{{";
    private const string Close = "}}";

    /// <summary>The page in order: a text and the name of what follows it; the last text is followed by nothing.</summary>
    public static ImmutableArray<(string Text, string? Name)> Page { get; } = Cut(Encoding.UTF8.GetString(Bytes("page.html")));

    /// <summary>Bytes of one file. Throws <see cref="FileNotFoundException"/> when the assembly holds no such file.</summary>
    public static byte[] Bytes(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream("preview/" + name)
            ?? throw new FileNotFoundException("No such file of the page.", name);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static ImmutableArray<(string Text, string? Name)> Cut(string page)
    {
        var parts = ImmutableArray.CreateBuilder<(string, string?)>();
        var at = 0;
        while (page.IndexOf(Open, at, StringComparison.Ordinal) is var open and >= 0)
        {
            var close = page.IndexOf(Close, open, StringComparison.Ordinal);
            parts.Add((page[at..open], page[(open + Open.Length)..close]));
            at = close + Close.Length;
        }

        parts.Add((page[at..], null));
        return parts.ToImmutable();
    }
}
