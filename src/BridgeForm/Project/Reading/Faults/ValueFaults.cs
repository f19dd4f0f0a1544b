namespace BridgeForm.Project.Reading.Faults;

/// <summary>Faults of single keys and values.</summary>
internal static class ValueFaults
{
    public static FaultGroup Group { get; } = new(
        "Keys and values",
        [
            new(
                FaultCode.WrongShape,
                "wrong-shape",
                "A single value, a list or a mapping where another of the three is needed.",
                "Write it as the fault shows."),
            new(
                FaultCode.UnknownKey,
                "unknown-key",
                "A key that there is not, at this place.",
                "Take the key that the fault suggests, or look it up in [project-file.md](project-file.md)."),
            new(
                FaultCode.KeysExclude,
                "keys-exclude-each-other",
                "Two keys that say the same thing in two ways.",
                "Give one of them."),
            new(
                FaultCode.MissingKey,
                "missing-key",
                "A key without which there is no bridge, and which has no default.",
                "Write it."),
            new(
                FaultCode.TooManyNames,
                "too-many-names",
                "More names of your own in one mapping than are read.",
                "Take names out."),
            new(
                FaultCode.BadName,
                "bad-name",
                "A name of your own that could not stand in tables and file names.",
                "Use letters, digits, hyphens, underscores and spaces."),
            new(
                FaultCode.UnknownName,
                "unknown-name",
                "A name in a mapping that takes known names only.",
                "Take one of the names that the fault lists."),
            new(
                FaultCode.EntryCount,
                "entry-count",
                "A list with more or fewer entries than it takes.",
                "Write as many as the fault says."),
            new(
                FaultCode.BadText,
                "bad-text",
                "A text that is empty, too long, of several lines, or holds characters that control a terminal or turn text around.",
                "Write one plain line."),
            new(
                FaultCode.UnknownChoice,
                "unknown-choice",
                "A word that the key does not know.",
                "Take one of the words that the fault lists."),
            new(
                FaultCode.NotWhole,
                "not-a-whole-number",
                "A count that is no whole number, or is outside its range.",
                "Write a whole number in the range that the fault names."),
            new(
                FaultCode.NotNumber,
                "not-a-number",
                "A number that is none, or is outside its range.",
                "Write a number in the range that the fault names, with a point for the decimals."),
            new(FaultCode.NotFlag, "not-true-or-false", "A switch that is neither on nor off.", "Write `true` or `false`."),
            new(
                FaultCode.NotSection,
                "not-a-section",
                "A section that is neither a nominal size of PS 20 nor a dressed size.",
                "Write one such as `2x6`, or `38 x 89 mm`; `bridgeform list lumber` lists the nominal sizes."),
            new(
                FaultCode.NotQuantity,
                "not-a-quantity",
                "A length, angle, force or the like that cannot be read: no unit, an unknown one, or one of another kind.",
                "Write number and unit, such as `5/8 in` or `16 mm`."),
            new(
                FaultCode.OutOfRange,
                "out-of-range",
                "A value that can be read and is too small or too large for its key.",
                "Write one in the range that the fault names."),
            new(
                FaultCode.UnknownRope,
                "unknown-rope",
                "A rope that the built-in table does not have.",
                "Take the key of your rope from `bridgeform list ropes`, or give it as a mapping under `ropes.type`."),
            new(
                FaultCode.UnknownSpecies,
                "unknown-species",
                "A species that is neither in the built-in table nor under `species`.",
                "Take a key of `bridgeform list species`, or give your own under `species`."),
            new(
                FaultCode.UnknownStock,
                "unknown-stock",
                "A part is to be cut from a stock that `stock` does not name. A `stock` of your own takes the place of the usual "
                    + "`treated` and `cedar`, which parts are cut from whose own `stock` key is left out.",
                "Write a name under `stock` as the part's own `stock`, or add the missing one there."),
            new(
                FaultCode.UnknownGrade,
                "unknown-grade",
                "A grade of lumber that the built-in tables do not have and that no values are given for.",
                "Write it as it is stamped; `bridgeform list grades` lists those that are known. Or give its values under `values`."),
            new(
                FaultCode.UnknownSize,
                "unknown-size",
                "A row of `values` for a size class that there is not.",
                "Write one of the classes that the fault lists, or a section."),
        ]);
}
