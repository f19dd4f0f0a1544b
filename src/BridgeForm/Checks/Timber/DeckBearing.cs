using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>How far boards and stringers lie on a base, treads on a stringer, and how hard they press there.</summary>
internal static class DeckBearing
{
    private const double Inch = Quantities.Units.MetresPerInch;
    private const double Stringers = 1.5 * Inch;

    // Own figures, in whole millimetres where the file has those.
    internal static double BoardsIn(UnitSystem units) => units == UnitSystem.Metric ? 25e-3 : 1 * Inch;

    private static double LeastIn(UnitSystem units) => units == UnitSystem.Metric ? 16e-3 : 5.0 / 8 * Inch;

    /// <summary>Least that a kind of the deck's members may bear on, metres: below it the check of its bearing's length fails.</summary>
    internal static double LeastOf(string kind, UnitSystem units) => IsStringer(kind) ? Stringers : LeastIn(units);

    private const string Joists = "IRC R502.6: joists bear on at least 1-1/2 in of wood";
    private const string Own = "own figures: boards look below 1 in (25 mm), boards and treads fail below 5/8 in (16 mm)";

    /// <summary>Lengths, then stresses, one for each kind.</summary>
    public static ImmutableArray<DeclaredCheck> Declared { get; } =
    [
        .. DeckKinds.All.Select(kind => new DeclaredCheck(
            $"{kind}-bearing-length", $"Length of a {kind}'s bearing", Lengths(kind), IsStringer(kind) ? Joists : Own,
            kind is "board" ? [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail] : [CheckStatus.Pass, CheckStatus.Fail])),
        .. DeckKinds.All.Select(kind => new DeclaredCheck(
            $"{kind}-bearing",
            $"Bearing of a {kind}",
            "Reaction of dead load and the heaviest area load, or the whole point load over the bearing, on width × length of the bearing, "
                + "against Fc⊥' of the softer of both woods; no factor for load duration, bearing area factor 1.0. A tread over three "
                + "stringers and more: the inner stringer's share.",
            "NDS 3.10.2 (ASD); NDS Supplement; factors named in the result",
            [CheckStatus.Pass, CheckStatus.Fail, CheckStatus.Engineer])),
    ];

    /// <summary>Whether an id is one of these.</summary>
    public static bool Is(string id) => Declared.Any(d => string.Equals(d.Id, id, StringComparison.Ordinal));

    /// <summary>Of the deck's members.</summary>
    public static IEnumerable<CheckResult> Check(CheckContext context)
    {
        foreach (var beam in DeckSpan.List(context))
        {
            var (length, how) = Length(context, beam);
            yield return beam.At(context, Long(context, beam, length, how));
            yield return beam.At(context, Pressed(context, beam, length));
        }
    }

    private static CheckResult Long(CheckContext context, DeckSpan beam, double length, string how)
    {
        var declared = Find(beam, "-bearing-length");
        var text = $"{beam.Section.Name} {beam.Kind}: {how} = {context.Words().Length(length)}";
        var units = context.Parameters.Units;
        var least = LeastOf(beam.Kind, units);
        return beam.Role == Role.Board && length >= least
            ? Outcome.AtLeast(declared, length, BoardsIn(units), "m", Own, text, CheckStatus.Warn)
            : Outcome.AtLeast(declared, length, least, "m", declared.Source, text);
    }

    private static CheckResult Pressed(CheckContext context, DeckSpan beam, double length)
    {
        var words = context.Words();
        var parameters = context.Parameters;
        var area = AreaLoad.Heaviest(parameters.Loads);

        // Half of a span; of a tread what a stringer takes of its length.
        var carried = parameters.Deck.Stringer is { } stringer && beam.Role == Role.Tread
            ? StringerShares.LargestWidth(parameters, stringer)
            : beam.Span.Length / 2;
        var (dead, load, point) = (beam.Dead * carried, area.Pressure * beam.Tributary * carried, parameters.Loads.LargestPoint);
        var (most, what) = load > point
            ? (load, $"{area.Name} {words.Pressure(area.Pressure)} on {words.Length(beam.Tributary)} × {words.Length(carried)}")
            : (point, $"point load all on one {beam.Kind} beside its bearing");
        var stress = (dead + most) / (beam.Bends.Breadth * length);
        return Bearing.Check(
            context,
            Find(beam, "-bearing"),
            stress,
            $"{words.Pounds(dead)} dead + {words.Pounds(most)} ({what}) on {words.Length(beam.Bends.Breadth)} × {words.Length(length)} = "
                + $"{words.Stress(stress)}",
            "NDS 3.10.2 (ASD)",
            LoadDuration.Live,
            BearingSide.Across(beam.Kind, beam.Stock, beam.Section),
            Under(parameters, beam));
    }

    private static BearingSide Under(BridgeParameters parameters, DeckSpan beam) =>
        parameters.Deck.Stringer is { } stringer && beam.Role == Role.Tread
        ? BearingSide.Across("stringer", stringer.Stock, stringer.Section)
        : BearingSide.Across("base", parameters.Frames.Base.Stock, parameters.Frames.Base.Section);

    /// <summary>
    /// Where two meet on a base each has its half, less half the gap between them; a bridge of one bay has end bases only.
    /// </summary>
    private static (double Length, string How) Length(CheckContext context, DeckSpan beam)
    {
        var words = context.Words();
        var (parameters, along) = (context.Parameters, context.Parameters.Frames.Base.Along);
        return parameters.Deck.Stringer is { } stringer && beam.Role == Role.Tread
            ? (stringer.Section.Thickness, "the stringer's thickness")
            : context.Layout.Bays < 2
            ? (along, "the whole end base")
            : ((along - parameters.Deck.ButtGap) / 2, $"({words.Length(along)} of base − {words.Length(parameters.Deck.ButtGap)} of "
                + "butt gap) / 2");
    }

    private static DeclaredCheck Find(DeckSpan beam, string what) =>
        Declared.Single(d => string.Equals(d.Id, beam.Kind + what, StringComparison.Ordinal));

    private static bool IsStringer(string kind) => string.Equals(kind, RoleTable.Of(Role.Stringer).Name, StringComparison.Ordinal);

    private static string Lengths(string kind) => kind switch
    {
        "tread" => "The stringer's thickness, against 5/8 in.",
        "board" =>
            "Half of what the base measures along the bridge less half the butt gap (two boards meet on it), against 1 in; below 5/8 "
                + "in it fails.",
        _ => "Half of what the base measures along the bridge less half the butt gap (two meet on it), against 1-1/2 in.",
    };
}
