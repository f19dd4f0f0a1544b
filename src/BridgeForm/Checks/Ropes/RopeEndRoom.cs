using BridgeForm.Loads;

namespace BridgeForm.Checks.Ropes;

/// <summary>
/// Where thimble, turned-back rope and clips lie: they reach from the rope's eye towards the bridge. Metres along the rope.
/// </summary>
internal static class RopeEndRoom
{
    private const string Source = "geometry along one rope; turn-back and thimble: sources of the cut length";

    /// <summary>What it compares.</summary>
    public static DeclaredCheck Declared { get; } = new(
        "rope-end-room",
        "Room for the ends of the ropes",
        "Thimble and turned-back rope with its clips, from the eye towards the bridge, against the straight rope that is there, "
            + "the shorter of both ends: from saddle to eye, the turnbuckle open, where the rope runs on to an anchor; else, where "
            + "its eye bears at the support itself, from there to the first base on the ropes. Fails where it is longer than what is "
            + "behind a saddle: clips hold nothing on a bend. To review where an eye bears at the support: it lies under the end frame, "
            + "and may reach under the first base on the ropes, whose channels are cut for bare rope; slots for it are not in the "
            + "model.",
        Source,
        [CheckStatus.Pass, CheckStatus.Warn, CheckStatus.Fail, CheckStatus.Engineer]);

    /// <summary>One result: what is behind a saddle first, then what lies under frames.</summary>
    public static CheckResult Check(CheckContext context)
    {
        var (words, cut) = (context.Words(), context.Ropework.Cut!);
        var rooms = Rooms(context, cut);
        var bears = string.Join(" and ", rooms.Where(r => !r.IsBehindSaddle).Select(r => r.End));
        var under = bears.Length > 0
            ? $"; at {bears} the eye bears at the support, so that eye and clips lie under the end frame: cut its channels and the "
                + "landing's slot clear of them, or set the anchors back (site.a.backstay, site.b.backstay)"
            : "";
        if (cut.Termination is not { } end || rooms.Exists(r => r.Length is null))
        {
            return Outcome.ForEngineer(
                Declared, cut.Termination ?? 0, "m", Source,
                $"length of thimble and turn-back, or of what hangs behind the eye, is in no table{under}");
        }

        var text = $"thimble and turn-back {words.Length(end)}";
        if (rooms.Where(r => r.IsBehindSaddle && end > r.Length!.Value).MinBy(r => r.Length) is { } shorter)
        {
            return Outcome.AtMost(
                Declared, end, shorter.Length!.Value, "m", Source,
                $"{text}; {Where(shorter)}: the clips reach over the saddle; set the anchor further back");
        }

        var least = rooms.MinBy(r => r.Length)!;
        var result = Outcome.AtMost(Declared, end, least.Length!.Value, "m", Source, $"{text}; {Where(least)}", CheckStatus.Warn);
        return bears.Length == 0 ? result : result with
        {
            Status = CheckStatus.Warn,
            Detail = result.Detail + (result.Ratio > 1 ? ", so that clips lie in its channels too" : "") + under,
        };

        string Where(Straight room) => room.IsBehindSaddle
            ? $"behind the saddle at {room.End}, the turnbuckle open, {words.Length(Math.Max(0, room.Length!.Value))} of straight rope"
            : $"from the support at {room.End} to the first base on the ropes {words.Length(room.Length!.Value)}";
    }

    /// <summary>Straight rope at an end; null where it is not known.</summary>
    private sealed record Straight(string End, bool IsBehindSaddle, double? Length);

    private static List<Straight> Rooms(CheckContext context, RopeCut cut)
    {
        var (marks, last) = (context.Ropework.Marks, context.Layout.Bays);
        return
        [
            Room("A", cut.BackstayA, last < 2 ? 0 : marks[1].Unstressed),
            Room("B", cut.BackstayB, last < 2 ? 0 : marks[^1].Unstressed - marks[^2].Unstressed),
        ];

        // Where no base hangs on the ropes, each end has half of them.
        Straight Room(string end, double stay, double frame) => stay > 0
            ? new(end, true, RopeChain.Of(context.Parameters, context.Ropework) is { } chain ? stay - chain.Shackle - chain.Open : null)
            : new(end, false, frame > 0 ? frame - (context.Parameters.Frames.Base.Along / 2) : cut.BetweenSupports / 2);
    }
}
