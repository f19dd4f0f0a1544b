using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Checks;

/// <summary>
/// Ids of the parts that checks name: as the pieces have them, by frame or bay and role. Roles come in the order in which they are
/// asked for, of each the left before the right, then by number. What there is none of is left out.
/// </summary>
internal static class CheckParts
{
    /// <summary>Ids by frame or bay and role.</summary>
    public static ILookup<(string Owner, Role Role), string> ByPlace(ImmutableArray<Piece> pieces) => pieces
        .SelectMany(p => p.Occurrences)
        .Select(o => (o.Id, Part: PartId.Read(o.Id)!.Value))
        .OrderBy(p => p.Part.Side)
        .ThenBy(p => p.Part.Number)
        .ToLookup(p => (p.Part.Owner, p.Part.Role), p => p.Id);

    /// <summary>The check with the parts that it is about, each once.</summary>
    public static CheckResult On(this CheckResult check, params IEnumerable<string> parts) =>
        check with { Parts = [.. parts.Distinct(StringComparer.Ordinal)] };

    /// <summary>The check with the base of a frame, 0 … bays.</summary>
    public static CheckResult OnBase(this CheckResult check, CheckContext context, int frame) =>
        check.On(context.InFrame(frame, Role.Base));

    /// <summary>The check with the base of a frame by its name; none where that is empty.</summary>
    public static CheckResult OnBase(this CheckResult check, CheckContext context, string frame) =>
        check.On(context.In(frame, Role.Base));

    /// <summary>Parts of a frame or bay by its name; none where the name is empty.</summary>
    public static IEnumerable<string> In(this CheckContext context, string owner, params IEnumerable<Role> roles) =>
        roles.SelectMany(role => context.ByPlace.Value[(owner, role)]);

    /// <summary>Parts of frame 0 … bays.</summary>
    public static IEnumerable<string> InFrame(this CheckContext context, int frame, params IEnumerable<Role> roles) =>
        context.In(context.Layout.Poses[frame].Name, roles);

    /// <summary>Parts of bay 1 … bays.</summary>
    public static IEnumerable<string> InBay(this CheckContext context, int bay, params IEnumerable<Role> roles) =>
        context.In(FramePoses.BayName(bay, context.Layout.Bays), roles);

    /// <summary>What people walk on in a bay: boards, or treads.</summary>
    public static IEnumerable<string> Walked(this CheckContext context, int bay) => context.InBay(bay, Role.Board, Role.Tread);

    /// <summary>Parts of the bays that meet at a frame; of an end frame of its one bay.</summary>
    public static IEnumerable<string> MeetingAt(this CheckContext context, string frame, Role role)
    {
        var last = context.Layout.Bays;
        var at = context.Frames.Select(f => f.Name).ToList().IndexOf(frame);
        return Enumerable.Range(at, 2).Where(bay => bay >= 1 && bay <= last).SelectMany(bay => context.InBay(bay, role));
    }

    /// <summary>Every part cut from some pieces, in the pieces' order.</summary>
    public static IEnumerable<string> Cut(this CheckContext context, Func<Piece, bool> from) =>
        context.Pieces.Where(from).SelectMany(p => p.Occurrences).Select(o => o.Id);

    /// <summary>A part with its mirror image, left before right, of a role that stands on both sides; else the part alone.</summary>
    public static IEnumerable<string> OnBothSides(string id) => PartId.Read(id) is { Side: not Side.None } part
        ? [(part with { Side = Side.Left }).ToString(), (part with { Side = Side.Right }).ToString()]
        : [id];
}
