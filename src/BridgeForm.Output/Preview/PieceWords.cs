using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Loads;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Output.Preview;

/// <summary>A piece in plain words, for people who have never held a saw.</summary>
internal static class PieceWords
{
    /// <summary>Angles that print as 0.0° are square to the reader.</summary>
    private const double SquareDegrees = 0.05;

    /// <summary>Labels and texts in order of interest.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="stock">What it is cut from.</param>
    /// <param name="words">The project's units.</param>
    /// <param name="place">Where it is turned or rolled over; null: as its role says.</param>
    public static ImmutableArray<(string Label, string Text)> Lines(
        Piece piece, StockParameters stock, QuantityText words, Occurrence? place = null)
    {
        var endForEnd = place is { Turn.EndForEnd: true };
        var ends = RoleTable.Of(piece.Role).Ends;
        var (near, far) = endForEnd ? (ends.Far, ends.Near) : (ends.Near, ends.Far);
        var lines = ImmutableArray.CreateBuilder<(string, string)>();
        lines.Add(("Size", Size(piece, words)));
        if (AreAlike(piece.Near, piece.Far))
        {
            lines.Add(("Both ends", Cut(piece.Near, piece.Shape)));
        }
        else
        {
            lines.Add((near, Cut(piece.Near, piece.Shape)));
            lines.Add((far, Cut(piece.Far, piece.Shape)));
        }

        AddChannels(lines, piece, words, endForEnd);
        foreach (var holes in piece.Shape.Holes.GroupBy(h => (h.Diameter, h.Depth)))
        {
            var depth = holes.Key.Depth is { } d ? words.Size(d) + " deep" : "right through";
            lines.Add(("Holes", Line($"{holes.Count()}, {words.Size(holes.Key.Diameter)} across, {depth}")));
        }

        lines.Add(("Wood", Line($"{stock.Species.Replace('-', ' ')}, {(stock.Treated ? "treated" : "untreated")} ({piece.Section})")));
        lines.Add(("Weight", words.Mass(piece.Mass)));
        lines.Add((
            "Arrow on the wood",
            $"{TurnWords.Arrow(piece, place)}; drawn {TurnWords.Place(piece)}"));
        if (place is not null)
        {
            lines.Add(($"Here it is {TurnWords.Name(place)}", TurnWords.Write(piece, place)));
        }

        return lines.ToImmutable();
    }

    /// <summary>Degrees to 0.1 with their sign of degree, from radians of either sign.</summary>
    public static string Degrees(double radians) => NumberText.Fixed(Math.Abs(Numbers.Degrees(radians)), 1) + "°";

    /// <summary>An end cut without saw-bench words: how far from square across the wide face, and how far the blade is tilted.</summary>
    public static string Cut(EndCut cut, CutStock? stock = null)
    {
        var text = (IsSquare(cut.Mitre), IsSquare(cut.Bevel)) switch
        {
            (true, true) => "cut square",
            (false, true) => $"cut at {Degrees(cut.Mitre)} from square, blade upright",
            (true, false) => $"cut straight across, blade tilted {Degrees(cut.Bevel)}",
            (false, false) => $"cut at {Degrees(cut.Mitre)} from square, blade tilted {Degrees(cut.Bevel)}",
        };
        return cut.InReach ? text + (cut.OnEdge ? ", the piece on its edge" : "")
            : cut.NeedsTemplate ? text + "; more than the saw reaches: "
                + (stock is null ? CutWays.Words(cut.Way) : CutWays.Words(cut, stock))
            : text + $"; more than the saw can set: hold the piece on a {Degrees(cut.Wedge)} wedge";
    }

    /// <summary>Sizes of the piece as it is; of a ripped one those of its taper, and of the stick it comes from.</summary>
    private static string Size(Piece piece, QuantityText words)
    {
        var stick = $"{words.Size(piece.Shape.Thickness)} thick, {words.Size(piece.Shape.Width)} wide";
        var length = $"{words.Size(piece.BlankLength)} long";
        return Taper.Measure(piece) is { } taper
            ? $"{words.Size(taper.Thick)} thick at one edge, {words.Size(taper.Thin)} at the other, {words.Size(taper.Width)} wide, "
                + $"{length}; sawn from a stick {stick}"
            : $"{stick}, {length}";
    }

    private static void AddChannels(
        ImmutableArray<(string Label, string Text)>.Builder lines, Piece piece, QuantityText words, bool endForEnd)
    {
        if (piece.Shape.Channels.IsEmpty)
        {
            return;
        }

        var first = piece.Shape.Channels[0];
        var slope = Elementary.Atan(first.FloorSlope);
        var places = string.Join(" and ", piece.Shape.Channels.Select(c => words.Size(c.Center)));
        var floor = IsSquare(slope) ? "level floor" : $"floor sloped {Degrees(slope)}";
        lines.Add((
            "Rope channels",
            $"{words.Size(first.Width)} wide, {words.Size(first.Depth)} deep, {floor}; middles {places} from the "
                + $"{(endForEnd ? "right" : "left")} end"));
    }

    private static bool AreAlike(EndCut a, EndCut b) => string.Equals(Cut(a), Cut(b), StringComparison.Ordinal);

    private static bool IsSquare(double radians) => Math.Abs(Numbers.Degrees(radians)) < SquareDegrees;

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A load case in a sentence or two.</summary>
internal static class CaseWords
{
    /// <summary>Id of the case with nothing on the bridge, which moves nothing.</summary>
    private const string Empty = "dead";

    /// <summary>
    /// How mid-span moves, how far the deck tilts where it tilts most, and how hard the rope pulls. The case must have a shape.
    /// </summary>
    public static string Write(LoadCaseResult load, QuantityText words)
    {
        var pull = $"The largest tension in one rope is {words.Force(load.Shape!.LargestTension)}.";
        if (load.RollsOver)
        {
            return $"IT ROLLS OVER: no position in which the deck stays upright was found. Drawn as if something held it. {pull}";
        }

        if (string.Equals(load.Id, Empty, StringComparison.Ordinal))
        {
            return pull;
        }

        var down = words.Size(Math.Abs(load.MidSpanDrop));
        var still = string.Equals(down, words.Size(0), StringComparison.Ordinal);
        var move = still ? "Mid-span stays where it is"
            : load.MidSpanDrop > 0 ? $"Mid-span goes down {down}"
            : $"Mid-span rises {down}";
        return $"{move}. {Tilt(load)} {pull}";
    }

    private static string Tilt(LoadCaseResult load)
    {
        var tilt = PieceWords.Degrees(load.CrossSlope ?? 0);
        return string.Equals(tilt, PieceWords.Degrees(0), StringComparison.Ordinal)
            ? "It does not tilt to one side."
            : $"It tilts to one side by up to {tilt}.";
    }
}
