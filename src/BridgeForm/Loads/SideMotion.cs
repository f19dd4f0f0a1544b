using System.Collections.Immutable;
using BridgeForm.Ropes.Modes;
using BridgeForm.Ropes.Pairs;

namespace BridgeForm.Loads;

/// <summary>
/// How the empty and the loaded bridge swing: up and down as one rope does, to the side as both with what stands on them.
/// </summary>
internal static class SideMotion
{
    /// <summary>Modes of one case; null for a bridge without interior frames, and where the case has no shape.</summary>
    /// <param name="input">What the cases were made from.</param>
    /// <param name="result">The case: <c>dead</c> or <c>live-full</c>.</param>
    /// <param name="token">Asked from round to round.</param>
    public static RopeModes? Find(LoadCaseInput input, LoadCaseResult result, CancellationToken token = default)
    {
        if (RopeModes.Find(result.Id, result.Shape!, token) is not { } modes || input.Standing is not { } standing)
        {
            return null;
        }

        if (LoadCases.Evenly(input, result.Id) is not { } even
            || SwayModes.Find(
                even.Rope, even.Spacing, even.Loads, even.Shape, Masses(input, standing, even.Loads),
                new WalkedDeck(standing.DeckHeights, input.ClearWidth / 2), token) is not { } sway)
        {
            return modes;
        }

        return modes with
        {
            Lateral = sway.Slowest,
            LateralOneHalfWave = sway.OneHalfWave,
            LateralTwoHalfWaves = sway.TwoHalfWaves,
            Walked = [.. modes.Walked, .. sway.Walked],
        };
    }

    // People stand all over the width: their distance from the middle counts by width² / 12.
    private static PairMasses Masses(LoadCaseInput input, StandingWeights standing, PairLoads loads)
    {
        var seconds = new double[loads.Weights.Length];
        for (var i = 1; i + 1 < seconds.Length; i++)
        {
            var people = (loads.Weights[i] - (2 * input.Design.Loads[i])) / BridgeMasses.Gravity;
            var height = standing.DeckHeights[i] + StandingWeights.PeopleOverDeck;
            seconds[i] = standing.Seconds[i] + (people * ((height * height) + (input.ClearWidth * input.ClearWidth / 12)));
        }

        return new PairMasses(
            [.. loads.Weights.Select(w => w / BridgeMasses.Gravity)],
            [.. loads.HeightMoments.Select(m => m / BridgeMasses.Gravity)],
            ImmutableArray.Create(seconds));
    }
}
