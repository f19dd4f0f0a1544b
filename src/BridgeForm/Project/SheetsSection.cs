using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;

namespace BridgeForm.Project;

/// <summary>One issue of the drawings after the first.</summary>
/// <param name="Index">Its letter or number.</param>
/// <param name="Date">Year, month and day; empty for a box to write in.</param>
/// <param name="Change">What changed.</param>
public sealed record SheetRevision(string Index, string Date, string Change);

/// <summary>
/// What the title block of the drawings says of who made them and when, in the user's own words; empty for a box to write in.
/// Nothing is taken from the clock.
/// </summary>
public sealed record SheetParameters
{
    /// <summary>Who owns the drawings.</summary>
    public string Owner { get; init; } = "";

    /// <summary>Where the bridge stands.</summary>
    public string Site { get; init; } = "";

    /// <summary>Number under which the owner keeps them.</summary>
    public string Number { get; init; } = "";

    /// <summary>Date of the first issue, year, month and day.</summary>
    public string Issued { get; init; } = "";

    /// <summary>Who made them.</summary>
    public string Created { get; init; } = "";

    /// <summary>Who approved them.</summary>
    public string Approved { get; init; } = "";

    /// <summary>Later issues, in the file's order, the oldest first.</summary>
    public ImmutableArray<SheetRevision> Revisions { get; init; } = [];
}

/// <summary>Keys under <c>sheets</c>, how they are read, what they must agree on.</summary>
internal static class SheetsSection
{
    private const string DateForm = "yyyy-MM-dd";
    private const string Revisions = "sheets.revisions";

    // Letters that a box of the title block has room for on the smallest sheet (own figures; ISO 7200 recommends 16 for the
    // number, 20 for a person and 2 for an index, read in a maker's table of its fields).
    private const int LongestNumber = 20;
    private const int LongestName = 24;
    private const int LongestOwner = 40;
    private const int LongestIndex = 3;
    private const int LongestChange = 60;

    public static KeySpec Keys => Define.Map(
        "sheets",
        "The title block of the drawings; what is left out is an empty box to write in",
        [
            Define.Text("owner", $"Who owns the drawings; {LongestOwner} letters"),
            Define.Text("site", $"Where the bridge stands; {LongestOwner} letters"),
            Define.Text("number", $"Number under which the owner keeps them; {LongestNumber} letters"),
            Define.Text("issued", "Date of the first issue, such as 2031-05-20"),
            Define.Text("created", $"Who made them; {LongestName} letters"),
            Define.Text("approved", $"Who approved them; {LongestName} letters"),
            Define.List(
                "revisions",
                "Later issues, the oldest first",
                Define.Map(
                    "",
                    "An issue",
                    [
                        Define.Text("index", $"Its letter or number; {LongestIndex} letters").Needed("A"),
                        Define.Text("date", "Its date, such as 2031-05-20"),
                        Define.Text("change", $"What changed; {LongestChange} letters").Needed("Deck 2 in wider"),
                    ]),
                0,
                100),
        ]);

    public static SheetParameters Read(FileValues v)
    {
        string Text(string path) => v.TextOrNull(path) ?? "";
        return new SheetParameters
        {
            Owner = Text("sheets.owner"),
            Site = Text("sheets.site"),
            Number = Text("sheets.number"),
            Issued = Text("sheets.issued"),
            Created = Text("sheets.created"),
            Approved = Text("sheets.approved"),
            Revisions =
            [
                .. v.Items(Revisions).Where(p => v.Good(p))
                    .Select(p => new SheetRevision(Text(p + ".index"), Text(p + ".date"), Text(p + ".change"))),
            ],
        };
    }

    /// <summary>Dates are dates, and every text fits its box.</summary>
    public static void Check(CheckedFile f)
    {
        Date(f, "sheets.issued");
        Longest(f, "sheets.owner", LongestOwner);
        Longest(f, "sheets.site", LongestOwner);
        Longest(f, "sheets.number", LongestNumber);
        Longest(f, "sheets.created", LongestName);
        Longest(f, "sheets.approved", LongestName);
        foreach (var path in f.Values.Items(Revisions))
        {
            Date(f, path + ".date");
            Longest(f, path + ".index", LongestIndex);
            Longest(f, path + ".change", LongestChange);
        }
    }

    private static void Date(CheckedFile f, string path)
    {
        if (f.Values.TextOrNull(path) is { } text && f.Good(path)
            && !DateOnly.TryParseExact(text, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            f.Stop(FaultCode.DateNotRead, path, $"{Name(path)}: '{text}' is no date; write year, month and day, such as 2031-05-20");
        }
    }

    private static void Longest(CheckedFile f, string path, int most)
    {
        if (f.Values.TextOrNull(path) is { } text && f.Good(path) && text.Length > most)
        {
            f.Stop(FaultCode.SheetTextTooLong, path, string.Create(
                CultureInfo.InvariantCulture,
                $"{Name(path)}: {text.Length} letters, and its box on the sheets has room for {most}; write it shorter"));
        }
    }

    private static string Name(string path) => path[(path.LastIndexOf('.') + 1)..];
}
