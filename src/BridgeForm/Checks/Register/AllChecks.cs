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
            One(InputFloors.DeclaredPoint, InputFloors.Point),
            One(MildInputs.Declared, MildInputs.Check),
            One(GuardHeight.Declared, GuardHeight.Check),
            One(GuardOpenings.Declared, GuardOpenings.Check),
            One(LandingOpenings.Declared, LandingOpenings.Check),
            Many([NewelHeight.Declared], c => NewelHeight.Check(c)),
            One(Handrail.Declared, Handrail.Check),
            Many([HandrailGrip.DeclaredSize, HandrailGrip.DeclaredClear], c => HandrailGrip.Check(c)),
            One(ClearWidth.Declared, ClearWidth.Check),
            One(EndSlope.Declared, EndSlope.Check),
            One(EndSlope.DeclaredGrip, EndSlope.Grip),
            One(DeckGaps.Declared, DeckGaps.Check),
            Many([Landings.DeclaredStep, Landings.DeclaredGap], c => Landings.Check(c)),
            Many([LandingBearers.Declared], c => LandingBearers.Check(c)),
            One(WoodOutdoors.Declared, WoodOutdoors.Check),
            One(WoodValues.Declared, WoodValues.Check),
            Many([TreatedWood.DeclaredZinc, TreatedWood.DeclaredFasteners], c => TreatedWood.Check(c)),
        },
        new[]
        {
            Many(DeckBending.Declared, c => DeckBending.Check(c)),
            Many(DeckShear.Declared, c => DeckShear.Check(c)),
            Many(DeckDeflection.Declared, c => DeckDeflection.Check(c)),
            Many(DeckBearing.Declared, c => DeckBearing.Check(c)),
            Many([BaseBending.Declared, BaseBending.DeclaredNet], c => BaseBending.Check(c)),
            Many([BaseShear.Declared, BaseShear.DeclaredNet], c => BaseShear.Check(c)),
            Many([EndBase.Declared, EndBase.DeclaredShear], c => EndBase.Check(c)),
            Many([ChannelFaces.Declared], c => ChannelFaces.Check(c)),
            Many([HoleSizes.Declared], c => HoleSizes.Check(c)),
            Many([HoleDistances.Declared], c => HoleDistances.Check(c)),
            Many([RopeBearing.Declared], c => RopeBearing.Check(c)),
            One(EndDistance.Declared, EndDistance.Check),
            One(GuardPost.Declared, GuardPost.Check),
            One(GuardPostShear.Declared, GuardPostShear.Check),
            One(GuardPostAlong.Declared, GuardPostAlong.Check),
            One(GuardBrace.Declared, GuardBrace.Check),
            Many([GuardJoints.DeclaredFoot, GuardJoints.DeclaredBrace, GuardJoints.DeclaredHead], c => GuardJoints.Check(c)),
            Many(
                [GuardBearing.DeclaredPostFoot, GuardBearing.DeclaredBraceFoot, GuardBearing.DeclaredBraceHead],
                c => GuardBearing.Check(c)),
            Many([CapSpan.DeclaredLevel, CapSpan.DeclaredDown], c => CapSpan.Check(c)),
            Many([RailSpan.Declared], c => RailSpan.Check(c)),
            Many([PicketSpan.Declared], c => PicketSpan.Check(c)),
            Many([NetLoad.Declared], c => NetLoad.Check(c)),
            Many(
                [HeldJoints.DeclaredRail, HeldJoints.DeclaredCap, HeldJoints.DeclaredBoard, HeldJoints.DeclaredStringer],
                c => HeldJoints.Check(c)),
            Many([HandrailSpan.Declared], c => HandrailSpan.Check(c)),
            Many([Newels.Declared, Newels.DeclaredFoot], c => Newels.Check(c)),
            Many([KeeperUplift.DeclaredGuard, KeeperUplift.DeclaredWind], c => KeeperUplift.Check(c)),
            Many([EndFrames.DeclaredDown, EndFrames.DeclaredAlong], c => EndFrames.Check(c)),
        },
        new[]
        {
            Many(ChannelMouths.Declared, c => ChannelMouths.Check(c)),
            One(ChannelRoom.Declared, ChannelRoom.Check),
            One(KeeperStrap.Declared, KeeperStrap.Check),
            Many([KeeperHoles.Declared], c => KeeperHoles.Check(c)),
            Many(ContactChecks.Declared, c => ContactChecks.Check(c)),
            Many(RopeChecks.Declared, c => RopeChecks.Run(c)),
            One(StockLengthCheck.Declared, StockLengthCheck.Check),
            One(OnSale.Declared, OnSale.Sections),
            One(OnSale.DeclaredRope, OnSale.Rope),
        },
    };

    /// <summary>Runs them all. Each reads the context and nothing else.</summary>
    /// <param name="context">What they look at.</param>
    public static ImmutableArray<CheckResult> Run(CheckContext context) =>
        [.. Works(context, CancellationToken.None).SelectMany(work => work())];

    /// <summary>The same as works that may run side by side; their results, one after another, are those of all checks.</summary>
    /// <param name="context">What they look at.</param>
    /// <param name="token">Asked before each check, and from bay to bay within it.</param>
    public static ImmutableArray<Func<ImmutableArray<CheckResult>>> Works(CheckContext context, CancellationToken token) =>
        s_groups.Select(group => new Func<ImmutableArray<CheckResult>>(() => Run(group, context with { Token = token }, token)))
            .ToImmutableArray();

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

    private static Registered Many(ImmutableArray<DeclaredCheck> declared, Func<CheckContext, IEnumerable<CheckResult>> of) =>
        new(declared, of);

    /// <summary>Checks that come out of one look, and how they do.</summary>
    private sealed record Registered(ImmutableArray<DeclaredCheck> Declared, Func<CheckContext, IEnumerable<CheckResult>> Of);
}
