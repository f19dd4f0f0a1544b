namespace BridgeForm.Project.Reading;

/// <summary>Reads <c>deck</c>.</summary>
internal static class DeckReader
{
    public static DeckParameters Read(FileValues v)
    {
        var across = v.Text("deck.layout") is "across";
        return new DeckParameters
        {
            Layout = across ? DeckLayout.Across : DeckLayout.Along,
            Board = v.Section("deck.board.section"),
            BoardStock = v.Text("deck.board.stock"),
            Count = double.IsNaN(v.Number("deck.count")) ? null : v.Whole("deck.count"),
            Gap = v.Number("deck.gap"),
            SideGap = v.Number("deck.side_gap"),
            ButtGap = v.Number("deck.butt_gap"),
            Stringer = across
                ? new StringerParameters(v.Section("deck.stringer.section"), v.Whole("deck.stringer.count"), v.Text("deck.stringer.stock"))
                : null,
        };
    }
}
