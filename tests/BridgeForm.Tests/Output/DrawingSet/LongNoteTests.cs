using BridgeForm.Output.Drawing;
using BridgeForm.Output.DrawingSet;

namespace BridgeForm.Tests.Output.DrawingSet;

/// <summary>A bay with so many parts that stand turned that the words for them fill more than a table's share of its sheet.</summary>
public sealed class LongNoteTests
{
    // Short enough to be patient with a busy machine, long enough to know that it will not end.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    private const string ManyRails = """
        name: Many rails (invented)
        site: { span: 162.362 in }
        ropes: { spacing: 54.827 in, sag: 14.486 % }
        frames:
          spacing: 4.016 ft
          base: { length: 303.47 cm }
          channel: { clearance: 9.701 mm, depth: 0.04736 ft }
          post: { lean: 0.48741 deg, foot: 50.131 cm }
          brace: { lean: 0.37055 rad }
        deck: { board: { section: 1x5 } }
        guard: { rails: { section: 2x4, count: 10 }, cap: { section: 8x14 } }
        shop: { tolerance: 0.00055 ft }
        """;

    [Fact]
    public async Task The_drawings_make_room_for_the_note_and_every_row_of_the_table()
    {
        var model = Bridges.Build(ManyRails);
        var book = await Task.Run(() => DrawingSheets.Draw(model)).WaitAsync(Patience);
        var texts = book.Pages.Select(p => p.Content).Where(p => p.Title.Contains("parts, heights", StringComparison.Ordinal))
            .SelectMany(Texts).ToList();

        // Every piece of the first bay has its row, and everything stands on the paper.
        var marks =
            model.Pieces.Where(p => p.Occurrences.Any(o => o.Id.StartsWith("B01/", StringComparison.Ordinal))).Select(p => p.Mark).ToList();
        Assert.True(marks.Count > 10);
        Assert.All(marks, mark => Assert.Contains(texts, t => t.Text == mark || t.Text == mark + ", turned"));
        Assert.All(texts, t => Assert.True(t.At.Y > 0, t.Text));
    }

    private static IEnumerable<SheetText> Texts(Sheet sheet) => sheet.Entities.SelectMany(e => e switch
    {
        SheetText text => [text],
        SheetWindow window => Texts(window.Content),
        _ => Enumerable.Empty<SheetText>(),
    });
}
