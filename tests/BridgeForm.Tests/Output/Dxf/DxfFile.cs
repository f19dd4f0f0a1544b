using System.Globalization;
using System.Text;

namespace BridgeForm.Tests.Output.Dxf;

/// <summary>One record of a DXF file: what follows a code 0 up to the next.</summary>
internal sealed record DxfRecord(string Type, string Section, IReadOnlyList<(int Code, string Value)> Tags)
{
    public string First(int code) => Tags.First(t => t.Code == code).Value;

    public IEnumerable<string> AllOf(int code) => Tags.Where(t => t.Code == code).Select(t => t.Value);

    public double Number(int code) => double.Parse(First(code), CultureInfo.InvariantCulture);

    public IEnumerable<double> Numbers(int code) => AllOf(code).Select(v => double.Parse(v, CultureInfo.InvariantCulture));
}

/// <summary>A DXF file taken apart into tags and records, with no knowledge of the writer.</summary>
internal sealed class DxfFile
{
    public DxfFile(byte[] bytes)
    {
        Assert.All(bytes, b => Assert.InRange(b, (byte)'\n', (byte)'~'));
        var lines = Encoding.ASCII.GetString(bytes).Split('\n');
        Assert.Equal(string.Empty, lines[^1]);
        Assert.True(lines.Length % 2 == 1, "Codes and values must come in pairs.");
        Tags = [.. lines[..^1].Chunk(2).Select(pair => (int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1]))];
        Records = [.. Split(Tags)];
    }

    public IReadOnlyList<(int Code, string Value)> Tags { get; }

    public IReadOnlyList<DxfRecord> Records { get; }

    public IEnumerable<DxfRecord> Entities =>
        Records.Where(r => string.Equals(r.Section, "ENTITIES", StringComparison.Ordinal) && r.Type is not ("SECTION" or "ENDSEC"));

    /// <summary>The tags of a header variable.</summary>
    public IReadOnlyList<string> Header(string name) =>
        [
            .. Tags.SkipWhile(t => t.Code != 9 || !string.Equals(t.Value, name, StringComparison.Ordinal))
                .Skip(1)
                .TakeWhile(t => t.Code is not (9 or 0))
                .Select(t => t.Value),
        ];

    private static IEnumerable<DxfRecord> Split(IReadOnlyList<(int Code, string Value)> tags)
    {
        // Comments may stand before everything else, and nothing else may.
        var section = string.Empty;
        for (var i = tags.TakeWhile(t => t.Code == 999).Count(); i < tags.Count;)
        {
            Assert.Equal(0, tags[i].Code);
            var body = tags.Skip(i + 1).TakeWhile(t => t.Code != 0).ToList();
            section = string.Equals(tags[i].Value, "SECTION", StringComparison.Ordinal) ? body[0].Value : section;
            yield return new DxfRecord(tags[i].Value, section, body);
            i += body.Count + 1;
        }
    }
}
