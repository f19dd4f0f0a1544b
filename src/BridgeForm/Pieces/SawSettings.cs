using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;
using BridgeForm.Solids;

namespace BridgeForm.Pieces;

/// <summary>A piece as the saw makes it: its ends at angles that the saw can be set to.</summary>
/// <param name="Exact">The piece of the model.</param>
/// <param name="Shape">Its stick with the ends as they are cut, each turned about the middle of the section.</param>
/// <param name="Near">Cut of the near end as it is set.</param>
/// <param name="Far">Cut of the far end as it is set.</param>
/// <param name="NearGap">How far the near cut opens from the exact one across the section, metres; 0 where it is exact.</param>
/// <param name="FarGap">The same of the far cut.</param>
public sealed record AsCut(Piece Exact, CutStock Shape, EndCut Near, EndCut Far, double NearGap, double FarGap);

/// <summary>
/// Settings of the saw. The model is exact; the saw is set by steps, and neighbouring cuts share a setting where nobody sees the
/// difference: the gap that follows at the joint stays within <c>shop.joint_gap</c>, and at an end that bears on wood within
/// 0.5 mm (common practice, no source).
/// </summary>
public static class SawSettings
{
    /// <summary>The widest gap under an end that carries load, metres.</summary>
    public const double LoadedGap = 0.0005;

    /// <summary>Every piece as the saw makes it, in order.</summary>
    /// <remarks>
    /// Candidates are the saw's own steps within a step of each cut; the one that serves most cuts still without a setting is
    /// taken first (greedy cover), and each cut then gets the nearest of those taken. Two ends that meet have half of the joint's
    /// gap each; an end that no step serves so then has what the ends it meets have left of it. A cut that still no step serves
    /// keeps its own angle.
    /// </remarks>
    public static ImmutableArray<AsCut> Share(ImmutableArray<Piece> pieces, ShopParameters shop)
    {
        var ends = pieces.SelectMany(p => new[] { new End(p, true, shop), new End(p, false, shop) }).ToList();
        var meeting = Meeting(pieces, ends);
        var taken = new List<Setting>();
        Cover(ends, e => e.IsLoaded ? LoadedGap : meeting[e].Count > 0 ? shop.JointGap / 2 : shop.JointGap, taken);
        var left = ends.Where(e => !e.IsSet).ToList();
        Cover(
            left,
            e => e.IsLoaded ? LoadedGap
                : shop.JointGap - meeting[e].Select(o => o.IsSet ? o.Gap : shop.JointGap / 2).DefaultIfEmpty(0).Max(),
            taken);
        return [.. pieces.Select((p, i) => Cut(p, ends[2 * i], ends[(2 * i) + 1]))];
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
    private static void Cover(List<End> ends, Func<End, double> most, List<Setting> taken)
    {
        var served = ends.Select(e => (End: e, Candidates: e.Candidates(most(e)))).ToList();
        var waiting = served.Where(s => s.Candidates.Count > 0 && !taken.Exists(s.Candidates.Contains)).ToList();
        while (waiting.Count > 0)
        {
            var best = waiting.SelectMany(s => s.Candidates)
                .GroupBy(c => c)
                .OrderByDescending(g => g.Count())
                .ThenBy(g => g.Key.Mitre)
                .ThenBy(g => g.Key.Bevel)
                .First().Key;
            taken.Add(best);
            _ = waiting.RemoveAll(s => s.Candidates.Contains(best));
        }

        foreach (var (end, candidates) in served)
        {
            end.Take(taken.Where(candidates.Contains));
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
        var shape = piece.Shape with { Near = Turned(piece.Shape.Near, near.Cut), Far = Turned(piece.Shape.Far, far.Cut) };
        return new AsCut(piece, shape, near.Cut, far.Cut, near.Gap, far.Gap);
    }

    /// <summary>The plane of a cut through the point where the exact one meets the stick's axis, looking the same way.</summary>
    private static Plane Turned(Plane exact, EndCut cut)
    {
        var (cosB, sinB) = (Elementary.Cos(cut.Bevel), Elementary.Sin(cut.Bevel));
        var normal = new Vector3d(cosB * Elementary.Cos(cut.Mitre), cosB * Elementary.Sin(cut.Mitre), sinB);
        var middle = new Vector3d(exact.XAt(0, 0), 0, 0);
        return Plane.Through(middle, exact.Normal.X < 0 ? -normal : normal);
    }

    /// <summary>Where two parts in line meet: at a frame, by its number.</summary>
    private readonly record struct Joint(Role Role, Side Side, int Number, int Frame);

    /// <summary>What the saw is set to, in its steps.</summary>
    private readonly record struct Setting(int Mitre, int Bevel);

    /// <summary>An end: exact until it takes a setting.</summary>
    private sealed class End
    {
        private readonly Piece _piece;
        private readonly ShopParameters _shop;
        private readonly EndCut _exact;
        private readonly double _step;

        public End(Piece piece, bool near, ShopParameters shop)
        {
            (_piece, _shop, _exact) = (piece, shop, near ? piece.Near : piece.Far);
            _step = shop.Saw.Step;
            Cut = _exact;
            IsSet = _exact.Way != CutWay.Saw;
        }

        /// <summary>The cut as it is made.</summary>
        public EndCut Cut { get; private set; }

        /// <summary>How far it opens from the exact one, metres.</summary>
        public double Gap { get; private set; }

        /// <summary>It has a setting of the saw's steps, or needs none since the saw does not cut it against its fence.</summary>
        public bool IsSet { get; private set; }

        /// <summary>It stands on wood and carries load.</summary>
        public bool IsLoaded => _piece.Role is Role.Post or Role.Brace;

        /// <summary>Settings within a step that open it by no more than a gap; none of a cut that the saw does not make.</summary>
        public HashSet<Setting> Candidates(double most) => _exact.Way != CutWay.Saw ? [] :
        [
            .. Steps(_exact.Mitre, _shop.MitreLimit).SelectMany(m => Steps(_exact.Bevel, _shop.BevelLimit).Select(b => new Setting(m, b)))
                .Where(s => GapOf(s) <= most + Tolerances.RoundOff),
        ];

        /// <summary>Takes the nearest of some settings; stays as it is where there is none.</summary>
        public void Take(IEnumerable<Setting> settings)
        {
            foreach (var setting in settings.OrderBy(GapOf).Take(1))
            {
                var (mitre, bevel) = (Signed(setting.Mitre, _exact.Mitre), Signed(setting.Bevel, _exact.Bevel));
                var edge = Elementary.Atan(Elementary.Tan(bevel) / Elementary.Cos(mitre));
                (Cut, Gap, IsSet) = (_exact with { Mitre = mitre, Bevel = bevel, Edge = edge }, GapOf(setting), true);
            }
        }

        private IEnumerable<int> Steps(double angle, double limit)
        {
            var size = Math.Abs(angle) / _step;
            var last = Math.Min(Math.Floor(size + 1), Math.Floor((limit / _step) + Tolerances.WholeRatio));
            for (var k = (int)Math.Max(0, Math.Ceiling(size - 1)); k <= last; k++)
            {
                yield return k;
            }
        }

        private double GapOf(Setting setting) => SawSettings.Gap(
            _piece.Shape, _exact.Mitre, _exact.Bevel, Signed(setting.Mitre, _exact.Mitre), Signed(setting.Bevel, _exact.Bevel));

        private double Signed(int steps, double angle) => (angle < 0 ? -1 : 1) * steps * _step;
    }
}
