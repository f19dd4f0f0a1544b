namespace BridgeForm.Project.Definition;

/// <summary>Keys under <c>deck</c> and <c>guard</c>.</summary>
internal static class DeckAndGuardKeys
{
    public static KeySpec Deck => Define.Map(
        "deck",
        "The deck",
        [
            Define.Choice("layout", "Boards along the bridge, or treads across it on stringers", "along", "along", "across").Starting(),
            Define.Map(
                "board",
                "Boards; with layout across, treads",
                [
                    Define.Section("section", "Lies flat", "2x6", "38 x 140 mm"),
                    Stock("treated"),
                ]).AllStarting(),
            (Define.Whole("count", "Boards side by side, or treads in a bay; auto for as many as fit", "1", "1000", "auto") with { Choices = ["auto"] }).Starting(),
            Define.Length("gap", "Least gap between boards", "0 in", "6 in", "1/4 in", "6 mm").Starting(),
            Define.Length("side_gap", "Gap from the outermost boards to the posts' feet", "0 in", "2 ft", "1/2 in", "12 mm").Starting(),
            Define.Length("butt_gap", "Gap between boards that meet end to end at a frame", "0 in", "2 in", "1/8 in", "3 mm").Starting(),
            Define.Map(
                "stringer",
                "Bearers of treads; with layout across only",
                [
                    Define.Section("section", "Stands on its narrow side", "2x6", "38 x 140 mm"),
                    Define.Whole("count", "Stringers side by side", "2", "100", "3"),
                    Stock("treated"),
                ]),
        ]).Starting();

    public static KeySpec Guard => Define.Map(
        "guard",
        "Rails and cap",
        [
            Define.Map(
                "rails",
                "Rails on the posts' inner faces",
                [
                    Define.Section("section", "Its wide face lies on the posts", "1x4", "19 x 89 mm"),
                    Define.Whole("count", "Rails a side, with equal gaps", "0", "200", "6"),
                    Define.List(
                        "heights",
                        "Heights of the rails' centre lines up along the post from the base's top, in place of count",
                        Define.Length("", "Height", "0 in", "12 ft"),
                        0,
                        200) with
                    { Example = "[6 in, 12 in, 18 in]", MetricExample = "[150 mm, 300 mm, 450 mm]" },
                    Stock("cedar"),
                ]) with
            { OneOf = ["count", "heights"] },
            Define.Map(
                "cap",
                "The board on the posts' heads",
                [
                    Define.Section("section", "Lies flat", "2x6", "38 x 140 mm"),
                    Stock("cedar"),
                ]),
        ]).AllStarting();

    private static KeySpec Stock(string name) => Define.Text("stock", "Name of the stock it is cut from", name);
}
