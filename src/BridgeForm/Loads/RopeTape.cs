using System.Collections.Immutable;
using BridgeForm.Project;

namespace BridgeForm.Loads;

/// <summary>A place on a rope laid out straight.</summary>
/// <param name="Name">A frame's name, or <c>eye A</c>, <c>cut end B</c>.</param>
/// <param name="Along">From the bearing point of the eye at A, metres without tension; negative for the cut end at A.</param>
/// <param name="AtTension">The same with the rope pulled to the marking tension.</param>
public sealed record TapeReading(string Name, double Along, double AtTension);

/// <summary>
/// One rope with its ends on, read off one tape hooked into the first eye: its eye at A, each frame, its eye at B, both cut ends. By the
/// one set of marks that the file chose. Where a rope ends at its support, its eye bears there and the chain lies behind; where it runs on
/// to an anchor, the eye lies short of that by the chain.
/// </summary>
public sealed record RopeTape
{
    /// <summary>Name of the eye at A, the tape's zero.</summary>
    public const string EyeA = "eye A";

    /// <summary>Name of the eye at B.</summary>
    public const string EyeB = "eye B";

    /// <summary>From the cut end at A to that at B; no cut ends where no table gives the ends.</summary>
    public required ImmutableArray<TapeReading> Readings { get; init; }

    /// <summary>What hangs behind each eye; null where its length is not known and no reading needs it.</summary>
    public required RopeChain? Chain { get; init; }

    /// <summary>From cut end to cut end, unstressed; null where no table gives the ends.</summary>
    public required double? CutLength { get; init; }

    /// <summary>
    /// What is left of the shorter backstay between saddle and eye; negative where the chain reaches over it; null without one.
    /// </summary>
    public required double? LeastBehindSaddle { get; init; }

    /// <summary>One rope of a bridge; null where it runs on to an anchor by a chain whose length is not known.</summary>
    public static RopeTape? Of(BridgeParameters parameters, RopeWork work)
    {
        if (work.Cut is not { } cut)
        {
            return null;
        }

        var chain = RopeChain.Of(parameters, work);
        if (Behind(cut.BackstayA, chain) is not { } behindA || Behind(cut.BackstayB, chain) is not { } behindB)
        {
            return null;
        }

        var (marks, shorter) = (work.Marks, work.Chosen.Shorter);
        var stretched = marks[^1].Unstressed > 0 ? marks[^1].AtMarkingTension / marks[^1].Unstressed : 1;
        var eyeB = (behindA + marks[^1].Unstressed + behindB) * shorter;
        var readings = ImmutableArray.CreateBuilder<TapeReading>();
        void Add(string name, double along) => readings.Add(new TapeReading(name, along, along * stretched));
        if (cut.Termination is { } end)
        {
            Add("cut end A", -end);
        }

        Add(EyeA, 0);
        foreach (var mark in marks)
        {
            Add(mark.Frame, (behindA + mark.Unstressed) * shorter);
        }

        Add(EyeB, eyeB);
        if (cut.Termination is { } other)
        {
            Add("cut end B", eyeB + other);
        }

        double[] stays = [.. new[] { (cut.BackstayA, behindA), (cut.BackstayB, behindB) }.Where(b => b.Item1 > 0).Select(b => b.Item2)];
        return new RopeTape
        {
            Readings = readings.ToImmutable(),
            Chain = chain,
            CutLength = eyeB + (2 * cut.Termination),
            LeastBehindSaddle = stays.Length > 0 ? stays.Min() : null,
        };
    }

    // Without a backstay the eye bears at the support, whatever hangs behind it.
    private static double? Behind(double backstay, RopeChain? chain) => backstay > 0 ? backstay - chain?.Length : 0;
}
