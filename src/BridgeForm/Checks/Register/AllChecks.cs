using System.Collections.Immutable;
using BridgeForm.Checks.Codes;
using BridgeForm.Checks.Geometry;
using BridgeForm.Checks.Ropes;
using BridgeForm.Checks.Timber;

namespace BridgeForm.Checks.Register;

/// <summary>Every check, in a stable order.</summary>
public static class AllChecks
{
    /// <summary>Declarations of all checks that any bridge can have, in the order of docs/checks.md.</summary>
    public static ImmutableArray<DeclaredCheck> Declared => [.. s_groups.SelectMany(g => g).SelectMany(r => r.Declared)];

    // A group's checks run one after another; groups may run side by side, for none looks at what another found.
    private static readonly Registered[][] s_groups =
    {
        new[]
        {
            One(InputFloors.DeclaredFactor, InputFloors.Factor),
            One(InputFloors.DeclaredLive, InputFloors.Live),
            One(GuardHeight.Declared, GuardHeight.Of),
            One(GuardOpenings.Declared, GuardOpenings.Of),
            One(GuardOpenings.DeclaredLanding, GuardOpenings.AtLanding),
            One(Handrail.Declared, Handrail.Of),
            One(ClearWidth.Declared, ClearWidth.Of),
            One(EndSlope.Declared, EndSlope.Of),
            One(EndSlope.DeclaredGrip, EndSlope.Grip),
            One(DeckGaps.Declared, DeckGaps.Of),
            Many([Landings.DeclaredStep, Landings.DeclaredGap], c => Landings.Of(c)),
            Many([TreatedWood.DeclaredZinc, TreatedWood.DeclaredFasteners], c => TreatedWood.Of(c)),
        },
        new[]
        {
            Many(DeckBending.Declared, c => DeckBending.Of(c)),
            Many(DeckShear.Declared, c => DeckShear.Of(c)),
            Many(DeckDeflection.Declared, c => DeckDeflection.Of(c)),
            Many(DeckBearing.Declared, c => DeckBearing.Of(c)),
            Many([BaseBending.Declared, BaseBending.DeclaredNet], c => BaseBending.Of(c)),
            Many([BaseShear.Declared, BaseShear.DeclaredNet], c => BaseShear.Of(c)),
            Many([ChannelFaces.Declared], c => ChannelFaces.Of(c)),
            Many([HoleSizes.Declared], c => HoleSizes.Of(c)),
            Many([RopeBearing.Declared], c => RopeBearing.Of(c)),
            One(EndDistance.Declared, EndDistance.Of),
            One(GuardPost.Declared, GuardPost.Of),
            One(GuardBrace.Declared, GuardBrace.Of),
            Many([GuardJoints.DeclaredFoot, GuardJoints.DeclaredBrace, GuardJoints.DeclaredHead], c => GuardJoints.Of(c)),
            Many([GuardBearing.DeclaredPostFoot, GuardBearing.DeclaredBraceFoot, GuardBearing.DeclaredBraceHead], c => GuardBearing.Of(c)),
            Many([CapSpan.DeclaredLevel, CapSpan.DeclaredDown], c => CapSpan.Of(c)),
            Many([RailSpan.Declared], c => RailSpan.Of(c)),
            Many([KeeperUplift.DeclaredGuard, KeeperUplift.DeclaredWind], c => KeeperUplift.Of(c)),
            Many([EndFrames.DeclaredDown, EndFrames.DeclaredAlong], c => EndFrames.Of(c)),
        },
        new[]
        {
            Many(ChannelMouths.Declared, c => ChannelMouths.Of(c)),
            One(KeeperStrap.Declared, KeeperStrap.Of),
            Many(ContactChecks.Declared, c => ContactChecks.Of(c)),
            Many(RopeChecks.Declared, c => RopeChecks.Of(c)),
            One(StockLengthCheck.Declared, StockLengthCheck.Of),
        },
    };

    /// <summary>Runs them all. Each reads the context and nothing else.</summary>
    /// <param name="context">What they look at.</param>
    public static ImmutableArray<CheckResult> Of(CheckContext context) =>
        [.. Works(context, CancellationToken.None).SelectMany(work => work())];

    /// <summary>The same as works that may run side by side; their results, one after another, are those of all checks.</summary>
    /// <param name="context">What they look at.</param>
    /// <param name="token">Asked before each check.</param>
    public static ImmutableArray<Func<ImmutableArray<CheckResult>>> Works(CheckContext context, CancellationToken token) =>
        s_groups.Select(group => new Func<ImmutableArray<CheckResult>>(() => Run(group, context, token))).ToImmutableArray();

    private static ImmutableArray<CheckResult> Run(Registered[] group, CheckContext context, CancellationToken token)
    {
        var results = ImmutableArray.CreateBuilder<CheckResult>();
        foreach (var check in group)
        {
            token.ThrowIfCancellationRequested();
            results.AddRange(check.Of(context));
        }

        return results.ToImmutable();
    }

    private static Registered One(DeclaredCheck declared, Func<CheckContext, CheckResult> of) => new([declared], c => [of(c)]);

    private static Registered Many(ImmutableArray<DeclaredCheck> declared, Func<CheckContext, IEnumerable<CheckResult>> of) => new(declared, of);

    /// <summary>Checks that come out of one look, and how they do.</summary>
    private sealed record Registered(ImmutableArray<DeclaredCheck> Declared, Func<CheckContext, IEnumerable<CheckResult>> Of);
}
