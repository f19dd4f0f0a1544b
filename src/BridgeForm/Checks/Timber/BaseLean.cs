using BridgeForm.Loads;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// What a base bears more because its frame leans: every weight pulls to the low side by its height × tan θ, and the rope there
/// carries more by that over the distance of the ropes, as in the load cases. θ is the largest tilt of any frame in any case of
/// its kind. What stands on the deck turns the base where it stands, evenly; guards, deck and frame at the posts' feet.
/// </summary>
/// <param name="Area">tan θ under live load or snow, wherever it lies.</param>
/// <param name="Point">tan θ under the point load.</param>
/// <param name="OwnMoment">Weight × height over the ropes of what belongs to one frame, wood wet, N·m.</param>
/// <param name="DeckHeight">Deck's surface over the ropes' axes, metres.</param>
internal sealed record BaseLean(double Area, double Point, double OwnMoment, double DeckHeight)
{
    // Pieces of the deck's width that turn the base each by themselves, each at its middle.
    private const int Pieces = 4;

    /// <summary>
    /// Upright frames where nothing was weighed; where frames roll over there is no tilt to go by, and another check fails.
    /// </summary>
    public static BaseLean Of(RopeWork work)
    {
        if (work.Standing is not { } standing)
        {
            return new BaseLean(0, 0, 0, 0);
        }

        double Steepest(Func<LoadCaseResult, bool> of) => Elementary.Tan(
            work.Cases.Where(of).Select(c => Math.Abs(c.CrossSlope ?? 0)).DefaultIfEmpty().Max());
        return new BaseLean(
            Steepest(c => !LoadCaseIds.IsPoint(c.Id)),
            Steepest(c => LoadCaseIds.IsPoint(c.Id) || !LoadCaseIds.IsTaken(c.Id)),
            standing.HeavyMoments.Max(),
            standing.DeckHeights.Max());
    }

    /// <summary>A base with an area load between two z, leaning to the right.</summary>
    /// <param name="beam">With the load on it.</param>
    /// <param name="foot">z of the right post's foot.</param>
    /// <param name="from">Where the load begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="down">All of it, newtons.</param>
    /// <param name="overDeck">How high it lies over the deck, metres.</param>
    public BaseBeam Under(BaseBeam beam, double foot, double from, double to, double down, double overDeck)
    {
        var turn = -Area * down * (DeckHeight + overDeck) / Pieces;
        BeamCouple[] pieces =
        [
            .. Enumerable.Range(0, Pieces).Select(i => new BeamCouple(from + ((to - from) * (i + 0.5) / Pieces), turn)),
            .. Own(foot, Area),
        ];
        return beam.Plus(couples: pieces);
    }

    /// <summary>A base with the point load at z, leaning to the right.</summary>
    public BaseBeam Under(BaseBeam beam, double foot, double at, double down) => beam.Plus(
        couples: [new(at, -Point * down * (DeckHeight + StandingWeights.PeopleOverDeck)), .. Own(foot, Point)]);

    private IEnumerable<BeamCouple> Own(double foot, double tan) => [new(-foot, -tan * OwnMoment / 2), new(foot, -tan * OwnMoment / 2)];
}
