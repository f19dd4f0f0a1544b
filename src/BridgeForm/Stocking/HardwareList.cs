using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Loads;
using BridgeForm.Materials;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Stocking;

/// <summary>A line of the hardware list.</summary>
/// <param name="Item">What to buy.</param>
/// <param name="Quantity">How many; null when the project file does not say.</param>
/// <param name="Where">For which places, with their number.</param>
/// <param name="Note">Sizes, how it is fitted, what is missing.</param>
/// <param name="Source">Where the count comes from.</param>
public sealed record HardwareItem(string Item, int? Quantity, string Where, string Note, string Source);

/// <summary>Everything to buy that is not wood.</summary>
public static class HardwareList
{
    /// <summary>What fasteners must be made of: the metal that the file says, or either that treated wood bears.</summary>
    public static string FastenerNote(FastenerMetal? metal) =>
        Metal(metal) + ": copper in treated wood corrodes plain and electroplated steel";

    /// <summary>The metal that the file says; without one both that may be.</summary>
    internal static string Metal(FastenerMetal? metal) => metal switch
    {
        FastenerMetal.HotDipGalvanized => "hot-dip galvanized",
        FastenerMetal.Stainless => "stainless",
        _ => "hot-dip galvanized or stainless",
    };

    private const string Model = "counted from the model";
    private const string File = "counted from the model; fasteners of one joint from the project file";

    /// <summary>Keepers, fasteners by joint, rope and its ends.</summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="pieces">Its pieces with their occurrences.</param>
    /// <param name="ropework">Its ropes.</param>
    /// <param name="forces">What the guard asks of a joint, newtons, by the joint's name.</param>
    public static ImmutableArray<HardwareItem> List(
        BridgeParameters parameters, ImmutableArray<Piece> pieces, RopeWork ropework, IReadOnlyDictionary<string, double> forces)
    {
        var joints = Joints.Count(pieces);
        return
        [
            .. Keepers(parameters, joints),
            .. joints.SelectMany(j => JointHardware.Rows(parameters, j, forces) ?? HeldHardware.Rows(parameters, j)
                ?? [Fasteners(j, parameters.Fasteners, FastenerNote(parameters.FastenerMetal), HeldHardware.Asks(parameters, j, forces))]),
            .. Unknown(joints, parameters.Fasteners),
            .. RopeHardware.List(parameters, ropework),
        ];
    }

    private static IEnumerable<HardwareItem> Keepers(BridgeParameters parameters, ImmutableArray<Joint> joints)
    {
        var words = new QuantityText(parameters.Units);
        var keeper = parameters.Frames.Keeper;
        if (joints.FirstOrDefault(j => j.Name is "keeper") is { } straps)
        {
            var holes = keeper.Hole > 0
                ? $"holes {words.Size(keeper.Hole)}, {words.Size(keeper.Spread)} apart, {words.Size(keeper.Depth)} deep"
                : "no holes in the project file";
            yield return new HardwareItem(
                "Keeper straps", straps.Count, $"{straps.Count} channels",
                $"holds the base to the rope; {holes}; {FastenerNote(parameters.FastenerMetal)}",
                Model);
        }
    }

    private static HardwareItem Fasteners(Joint joint, ImmutableSortedDictionary<string, int> given, string metal, string asks)
    {
        int? each = given.Where(g => IsNamed(joint, g.Key)).Select(g => (int?)g.Value).FirstOrDefault();
        var where = string.Create(CultureInfo.InvariantCulture, $"{joint.Count} joints: {joint.What}");
        return each is { } n
            ? new HardwareItem(
                $"Fasteners, {joint.Name}", n * joint.Count, where,
                string.Create(CultureInfo.InvariantCulture, $"{n} a joint; {metal}"), File)
            : new HardwareItem($"Fasteners, {joint.Name}", null, where, $"{asks}count not given: write fasteners: {{ {joint.Name}: N }} "
                + $"into the project file, N from your engineer; {metal}", Model);
    }

    /// <summary>Joints under <c>fasteners</c> that this bridge has none of: not dropped, but told.</summary>
    private static IEnumerable<HardwareItem> Unknown(ImmutableArray<Joint> joints, ImmutableSortedDictionary<string, int> given) =>
        given.Where(g => !joints.Any(j => IsNamed(j, g.Key))).Select(g => new HardwareItem(
            $"Fasteners, {g.Key}",
            null,
            "no such joint in this bridge",
            $"its joints are {string.Join(", ", joints.Select(j => j.Name))}",
            "project file"));

    private static bool IsNamed(Joint joint, string key) =>
        string.Equals(joint.Name, key, StringComparison.Ordinal);
}

/// <summary>Rope and what its ends are made with.</summary>
internal static class RopeHardware
{
    private const int Ropes = 2;
    private const int RopeEnds = 2 * Ropes;
    private const string AllEnds = "two ropes, two ends";
    private const string Model = "counted from the model";

    /// <summary>Rope, its ends, turnbuckles and shackles; nothing where the model has no ropes.</summary>
    public static IEnumerable<HardwareItem> List(BridgeParameters parameters, RopeWork ropework)
    {
        if (ropework.Cut is not { } cut)
        {
            return [];
        }

        var words = new QuantityText(parameters.Units);
        return
        [
            Rope(parameters.Ropes.Rope.Name, cut, RopeTape.Of(parameters, ropework), words),
            .. Ends(parameters.Ropes, words, parameters),
            Turnbuckles(parameters, ropework, words),
            Fitting("Shackles", FittingSet.Shackles, ropework, parameters, "one at each end of each rope; pin secured"),
        ];
    }

    private static HardwareItem Rope(string rope, RopeCut cut, RopeTape? tape, QuantityText words)
    {
        var name = $"Rope {rope}";
        return (tape is null ? cut.Length : tape.CutLength) is { } length
            ? new HardwareItem(
                name, Ropes, $"{words.Length(length)} each to cut, unstressed",
                $"{words.Length(length - (2 * cut.Termination!.Value))} from eye to eye and {words.Length(cut.Termination.Value)} at each "
                    + $"end; {cut.TerminationSource}",
                Model)
            : new HardwareItem(
                name, Ropes, $"{words.Length(cut.BetweenEnds)} each from end to end, unstressed",
                $"add both ends: {cut.TerminationSource}", Model);
    }

    private static IEnumerable<HardwareItem> Ends(Project.RopeParameters ropes, QuantityText words, BridgeParameters parameters)
    {
        if (!Terminations.IsClips(ropes))
        {
            yield return new HardwareItem(
                $"Rope ends, {ropes.TerminationKind}", RopeEnds, AllEnds, "to the maker's instructions for this rope", Model);
            yield break;
        }

        if (ropes.Rope.Kind == RopeKind.Strand)
        {
            yield return new HardwareItem(
                "Rope ends", RopeEnds, AllEnds,
                "U-bolt clips slip on strand: grips or sockets made for it, to their maker's instructions", Model);
            yield break;
        }

        yield return Clips(ropes, words, parameters.Units);
        yield return new HardwareItem(
            "Thimbles", RopeEnds, "one a rope end",
            $"for rope of {words.Size(ropes.Rope.Diameter)}; heavy pattern, {HardwareList.Metal(parameters.FastenerMetal)}", Model);
    }

    private static HardwareItem Clips(Project.RopeParameters ropes, QuantityText words, UnitSystem units)
    {
        if (Terminations.ClipsFor(ropes) is not { } row)
        {
            return new HardwareItem(
                "Rope clips", null, AllEnds, $"no row for clips on rope of {words.Size(ropes.Rope.Diameter)}: an engineer decides", "none");
        }

        var rope = units == UnitSystem.Metric ? new Checks.CheckWords(units).InInches(row.Diameter) : row.Size + " in";
        var note = string.Create(
            CultureInfo.InvariantCulture,
            $"{row.Count} an end, at least; for {rope} rope; {words.Size(row.Spacing)} apart; turn back {words.Size(row.TurnBack)}; "
                + $"torque {new Checks.CheckWords(units).Torque(row.Torque)}, checked again under load; U-bolt on the dead end; "
                + $"drop-forged");
        return new HardwareItem("Rope clips", RopeEnds * row.Count, AllEnds, note, row.Source);
    }

    private static HardwareItem Turnbuckles(BridgeParameters parameters, RopeWork work, QuantityText words)
    {
        var reach = EndTurnbuckle.Of(parameters, work).TakeUp is { } each
            ? $"take-up {new Checks.CheckWords(words.Units).InInches(each)}"
                + (RopeChain.Of(parameters, work) is { } chain ? $", hung {words.Size(chain.Opening)} open" : "")
            : "take-up: see the check rope-take-up";
        return Fitting("Turnbuckles", FittingSet.Turnbuckles, work, parameters, $"one at each end of each rope; {reach}");
    }

    private static HardwareItem Fitting(string item, FittingSet set, RopeWork work, BridgeParameters parameters, string note)
    {
        var words = new QuantityText(parameters.Units);
        var pull = work.LargestPull;
        var many = Ropes * FittingSet.PerRope;
        return set.Smallest(pull) is { } size
            ? new HardwareItem(
                $"{item} {size.Named(words.Units)}", many, AllEnds,
                $"{note}; working load {words.Force(size.WorkingLoad)} for {words.Force(pull)}; "
                    + HardwareList.Metal(parameters.FastenerMetal),
                set.Source)
            : new HardwareItem(
                item, many, AllEnds, $"{note}; none of this set carries {words.Force(pull)}: an engineer chooses", set.Source);
    }
}
