using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>A piece as the saw makes it: its ends at angles that the saw can be set to.</summary>
/// <param name="Exact">The piece of the model.</param>
/// <param name="Shape">Its stick with the ends as they are cut, each turned about the middle of the section, and channels' floors.</param>
/// <param name="Near">Cut of the near end as it is set.</param>
/// <param name="Far">Cut of the far end as it is set.</param>
/// <param name="NearGap">How far the near cut opens from the exact one across the section, metres; 0 where it is exact.</param>
/// <param name="FarGap">The same of the far cut.</param>
public sealed record AsCut(Piece Exact, CutStock Shape, EndCut Near, EndCut Far, double NearGap, double FarGap)
{
    /// <summary>Its near end meets no other and carries no load: no joint opens there.</summary>
    public bool NearFree { get; init; }

    /// <summary>The same of its far end.</summary>
    public bool FarFree { get; init; }
}

/// <summary>
/// Settings of the saw. The model is exact; the saw is set by steps, and neighbouring cuts share a setting where nobody sees the
/// difference: the gap that follows at the joint stays within <c>shop.joint_gap</c>, and at an end that bears on wood within
/// 0.5 mm (common practice, no source).
/// </summary>
public static class SawSettings
{
    /// <summary>The widest gap under an end that carries load, metres.</summary>
    public const double LoadedGap = 0.0005;

    /// <summary>The most that an end which meets no other is out of its plane, metres: 1/16 in, an own figure.</summary>
    public const double FreeGap = Quantities.Units.MetresPerInch / 16;

    // An end that is square to what a sheet prints, a tenth of a degree, stays square whatever the saw's steps. Radians.
    private const double Square = Math.PI / 3600;

    // Between its steps a saw is set by an angle gauge, to what the sheet prints: a tenth of a degree. Radians.
    private const double Between = Math.PI / 1800;

    /// <summary>Every piece as the saw makes it, in order.</summary>
    /// <remarks>
    /// Candidates are the saw's own steps within a step of each cut; the one that serves most cuts still without a setting is
    /// taken first (greedy cover), of several the one that opens them least, and each cut then gets the nearest of those taken.
    /// Two ends that meet have half of the joint's gap each, an end that meets none <see cref="FreeGap"/>; what is square stays
    /// square. An end that no step serves so is set between the steps, to a tenth of
    /// a degree. Then a setting whose cuts all find another one within what the ends they meet have left of the joint's gap is
    /// given up, those of the fewest cuts first.
    /// </remarks>
    public static ImmutableArray<AsCut> Share(ImmutableArray<Piece> pieces, ShopParameters shop)
    {
        var ends = pieces.SelectMany(p => new[] { new End(p, true, shop), new End(p, false, shop) }).ToList();
        var meeting = Meeting(pieces, ends);
        var taken = new List<Setting>();
        double Half(End end) => end.IsLoaded ? LoadedGap : meeting[end].Count > 0 ? shop.JointGap / 2 : FreeGap;
        Cover(ends, e => e.Candidates(Half(e), shop.Saw.Step), taken);
        Cover([.. ends.Where(e => !e.IsSet)], e => e.Candidates(Half(e), Between), taken);
        Thin(ends, e => e.IsLoaded || meeting[e].Count == 0 || meeting[e].Contains(e) ? Half(e)
            : shop.JointGap - meeting[e].Max(o => o.Gap), taken);
        bool IsFree(End end) => !end.IsLoaded && meeting[end].Count == 0;
        return
        [
            .. pieces.Select((p, i) => Cut(p, ends[2 * i], ends[(2 * i) + 1]) with
            {
                NearFree = IsFree(ends[2 * i]),
                FarFree = IsFree(ends[(2 * i) + 1]),
            }),
        ];
    }

    /// <summary>
    /// How far a plane opens from another through the same point of the section's middle, from corner to corner: W·|Δ tan m| +
    /// T·|Δ (tan b / cos m)|, the two slopes of a cut across width and thickness. Metres.
    /// </summary>
    public static double Gap(CutStock stock, double mitre, double bevel, double otherMitre, double otherBevel) =>
        (stock.Width * Math.Abs(Elementary.Tan(mitre) - Elementary.Tan(otherMitre)))
        + (stock.Thickness * Math.Abs(
            (Elementary.Tan(bevel) / Elementary.Cos(mitre)) - (Elementary.Tan(otherBevel) / Elementary.Cos(otherMitre))));

    /// <summary>Gives every end its setting that one serves within the gap it may open by.</summary>
    private static void Cover(List<End> ends, Func<End, HashSet<Setting>> candidatesOf, List<Setting> taken)
    {
        var served = ends.Select(e => (End: e, Candidates: candidatesOf(e))).ToList();
        var waiting = served.Where(s => s.Candidates.Count > 0 && !taken.Exists(s.Candidates.Contains)).ToList();
        while (waiting.Count > 0)
        {
            var counted = waiting.SelectMany(s => s.Candidates).GroupBy(c => c).Select(g => (Setting: g.Key, Count: g.Count())).ToList();
            var most = counted.Max(c => c.Count);
            var best = counted.Where(c => c.Count == most).Select(c => c.Setting)
                .OrderBy(c => waiting.Where(s => s.Candidates.Contains(c)).Sum(s => s.End.GapOf(c)))
                .ThenBy(c => c.Mitre)
                .ThenBy(c => c.Bevel)
                .First();
            taken.Add(best);
            _ = waiting.RemoveAll(s => s.Candidates.Contains(best));
        }

        foreach (var (end, candidates) in served)
        {
            _ = end.TryTake(taken.Where(candidates.Contains));
        }
    }

    /// <summary>Gives up settings that the others can stand in for.</summary>
    private static void Thin(List<End> ends, Func<End, double> most, List<Setting> taken)
    {
        var users = ends.Where(e => e.Taken is not null).GroupBy(e => e.Taken!.Value).OrderBy(g => g.Count())
            .ThenByDescending(g => g.Key.Mitre).ThenByDescending(g => g.Key.Bevel).Select(g => g.Key).ToList();
        foreach (var setting in users)
        {
            var moved = ends.Where(e => e.Taken == setting).ToList();
            var others = taken.Where(t => t != setting).ToList();
            if (moved.TrueForAll(e => e.TryTake(others.Where(o => e.IsNear(o) && e.GapOf(o) <= most(e) + Tolerances.RoundOff))))
            {
                _ = taken.Remove(setting);
            }
            else
            {
                moved.ForEach(e => e.TryTake([setting]));
            }
        }
    }

    /// <summary>
    /// Which ends meet, in any place where their pieces stand: of parts that run along the bridge, the end at B of one bay and
    /// the end at A of the next, of the same side and number.
    /// </summary>
    private static Dictionary<End, HashSet<End>> Meeting(ImmutableArray<Piece> pieces, List<End> ends)
    {
        var joints = pieces.SelectMany((piece, i) => piece.Occurrences.SelectMany(o => JointsOf(o).Select(j =>
            (Joint: j.At, End: ends[(2 * i) + (j.Near ? 0 : 1)])))).ToLookup(j => j.Joint, j => j.End);
        var meeting = ends.ToDictionary(e => e, _ => new HashSet<End>());
        foreach (var joint in joints)
        {
            foreach (var end in joint)
            {
                meeting[end].UnionWith(joint.Where(other => other != end));
            }

            // A piece that stands in both bays may meet itself with the same end, turned.
            foreach (var twice in joint.GroupBy(e => e).Where(g => g.Count() > 1))
            {
                _ = meeting[twice.Key].Add(twice.Key);
            }
        }

        return meeting;
    }

    /// <summary>Frames at which a part along the bridge ends, and which of its piece's ends lies there.</summary>
    private static IEnumerable<(Joint At, bool Near)> JointsOf(Occurrence place)
    {
        if (PartId.Read(place.Id) is { } part && RoleTable.Of(part.Role).Axis == RoleAxis.Along
            && int.TryParse(part.Owner.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var bay))
        {
            yield return (new Joint(part.Role, part.Side, part.Number, bay - 1), !place.Turn.EndForEnd);
            yield return (new Joint(part.Role, part.Side, part.Number, bay), place.Turn.EndForEnd);
        }
    }

    private static AsCut Cut(Piece piece, End near, End far)
    {
        var shape = piece.Shape with
        {
            Near = Turned(piece.Shape.Near, near.Cut),
            Far = Turned(piece.Shape.Far, far.Cut),
            Channels = ChannelFloors.AsCut(piece.Shape),
        };
        return new AsCut(piece, shape, near.Cut, far.Cut, near.Gap, far.Gap);
    }

    /// <summary>The plane of a cut through the point where the exact one meets the stick's axis, looking the same way.</summary>
    private static Plane Turned(Plane exact, EndCut cut)
    {
        var normal = Lying.Normal(cut.Mitre, cut.Bevel);
        var middle = new Vector3d(exact.XAt(0, 0), 0, 0);
        return Plane.Through(middle, exact.Normal.X < 0 ? -normal : normal);
    }

    /// <summary>Where two parts in line meet: at a frame, by its number.</summary>
    private readonly record struct Joint(Role Role, Side Side, int Number, int Frame);

    /// <summary>What the saw is set to, radians, not negative.</summary>
    private readonly record struct Setting(double Mitre, double Bevel);

    /// <summary>An end: exact until it takes a setting.</summary>
    private sealed class End
    {
        private readonly Piece _piece;
        private readonly ShopParameters _shop;
        private readonly EndCut _exact;

        public End(Piece piece, bool near, ShopParameters shop)
        {
            (_piece, _shop, _exact) = (piece, shop, near ? piece.Near : piece.Far);
            Cut = _exact;
        }

        private double Mitre => _exact.SawMitre;

        private double Bevel => _exact.SawBevel;

        /// <summary>The cut as it is made.</summary>
        public EndCut Cut { get; private set; }

        /// <summary>The setting it has; null for none.</summary>
        public Setting? Taken { get; private set; }

        /// <summary>How far it opens from the exact one, metres.</summary>
        public double Gap { get; private set; }

        /// <summary>It has a setting, or needs none since the saw does not cut it against its fence.</summary>
        public bool IsSet => Taken is not null || _exact.Way != CutWay.Saw;

        /// <summary>It stands on wood and carries load.</summary>
        public bool IsLoaded => _piece.Role is Role.Post or Role.Brace;

        /// <summary>Settings by that step, within one of the saw's, that open it by no more than a gap; none of other cuts.</summary>
        public HashSet<Setting> Candidates(double most, double step) => _exact.Way != CutWay.Saw ? [] : IsSquare ? [new Setting(0, 0)] :
        [
            .. Steps(Mitre, step, _shop.MitreLimit)
                .SelectMany(m => Steps(Bevel, step, _shop.BevelLimit).Select(b => new Setting(m, b)))
                .Where(s => GapOf(s) <= most + Tolerances.RoundOff),
        ];

        private bool IsSquare => Math.Abs(Mitre) < Square && Math.Abs(Bevel) < Square;

        /// <summary>Within one of the saw's steps; a square end is near to none but square.</summary>
        public bool IsNear(Setting setting) => IsSquare ? setting == new Setting(0, 0) :
            Math.Abs(setting.Mitre - Math.Abs(Mitre)) <= _shop.Saw.Step + Tolerances.RoundOff
            && Math.Abs(setting.Bevel - Math.Abs(Bevel)) <= _shop.Saw.Step + Tolerances.RoundOff;

        /// <summary>How far a setting opens it, metres.</summary>
        public double GapOf(Setting setting) => SawSettings.Gap(
            _piece.Shape.For(_exact), Mitre, Bevel, Signed(setting.Mitre, Mitre), Signed(setting.Bevel, Bevel));

        /// <summary>Takes the nearest of some settings; false, and nothing changed, where there is none.</summary>
        public bool TryTake(IEnumerable<Setting> settings)
        {
            if (settings.OrderBy(GapOf).Select(s => (Setting?)s).FirstOrDefault() is not { } setting)
            {
                return false;
            }

            var set = Lying.Cut(Lying.Normal(Signed(setting.Mitre, Mitre), Signed(setting.Bevel, Bevel)));
            var cut = _exact.OnEdge ? Lying.Rolled(set, back: true) : set;
            (Cut, Gap, Taken) = (
                _exact with { Mitre = cut.Mitre, Bevel = cut.Bevel, Edge = cut.Edge }, GapOf(setting), setting);
            return true;
        }

        /// <summary>
        /// Multiples of a step, each by one product so that equal ones are equal, no further than one of the saw's steps away.
        /// </summary>
        private IEnumerable<double> Steps(double angle, double step, double limit)
        {
            var (size, room) = (Math.Abs(angle) / step, _shop.Saw.Step / step);
            var last = Math.Min(Math.Floor(size + room), Math.Floor((limit / step) + Tolerances.WholeRatio));
            for (var k = (int)Math.Max(0, Math.Ceiling(size - room)); k <= last; k++)
            {
                yield return k * step;
            }
        }

        private static double Signed(double size, double angle) => angle < 0 ? -size : size;
    }
}
