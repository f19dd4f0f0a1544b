using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Ropes;

namespace BridgeForm.Loads;

/// <summary>What one rope does to one support, in the load case that pulls it hardest. Newtons.</summary>
/// <param name="Support"><c>A</c> or <c>B</c>.</param>
/// <param name="Case">Id of the case.</param>
/// <param name="Tension">Tension of the rope at the support.</param>
/// <param name="Horizontal">Its horizontal part, towards the other support.</param>
/// <param name="Vertical">Its vertical part, down on the support; negative where the rope pulls up.</param>
/// <param name="Backstay">What holds it; null where the rope ends at the support itself.</param>
public sealed record SupportPull(
    string Support, string Case, double Tension, double Horizontal, double Vertical, BackstayPull? Backstay)
{
    /// <summary>What the anchor holds.</summary>
    public double Held => Backstay?.Tension ?? Tension;

    /// <summary>Down on the post, tree or saddle.</summary>
    public double PostVertical => Vertical + (Backstay?.Vertical ?? 0);

    /// <summary>Towards the other support, what the post, tree or saddle must hold; negative where the backstay pulls harder.</summary>
    public double PostHorizontal => Horizontal - (Backstay?.Horizontal ?? 0);

    /// <summary>Both supports under the case with the largest tension at each.</summary>
    public static ImmutableArray<SupportPull> Find(SiteParameters site, ImmutableArray<LoadCaseResult> cases)
    {
        LoadCaseResult[] solved = [.. cases.Where(c => c.Shape is not null)];
        return solved.Length == 0
            ? []
            : [At("A", site.A, solved, c => c.ReactionA), At("B", site.B, solved, c => c.ReactionB)];
    }

    private static SupportPull At(
        string name, SupportParameters support, LoadCaseResult[] cases, Func<LoadCaseResult, RopePoint> reaction)
    {
        var worst = Ties.FirstLargest(cases, c => ElasticCatenary.Hypotenuse(reaction(c).X, reaction(c).Y))!;
        var force = reaction(worst);
        var (tension, horizontal) = (ElasticCatenary.Hypotenuse(force.X, force.Y), Math.Abs(force.X));
        var stay = support.Backstay is { } backstay ? BackstayPull.Of(backstay, tension, horizontal) : null;
        return new SupportPull(name, worst.Id, tension, horizontal, -force.Y, stay);
    }
}

/// <summary>Pull along a backstay. Newtons.</summary>
/// <param name="Angle">Below the horizontal, radians.</param>
/// <param name="Tension">
/// Along it: that of the rope where it slides over the saddle; where it is held there, what balances the whole horizontal pull.
/// </param>
public sealed record BackstayPull(double Angle, double Tension)
{
    /// <summary>Away from the span.</summary>
    public double Horizontal => Tension * Elementary.Cos(Angle);

    /// <summary>Down on the saddle, and up on the anchor.</summary>
    public double Vertical => Tension * Elementary.Sin(Angle);

    /// <summary>
    /// Over a sliding saddle without friction the tension stays the same. At a held saddle the post is taken as free to
    /// lean, so that the backstay holds all of the horizontal pull, as <see cref="HeldBackstay"/> takes it for the shape.
    /// </summary>
    public static BackstayPull Of(BackstayParameters stay, double tension, double horizontal) =>
        new(stay.Angle, stay.Sliding ? tension : HeldBackstay.Tension(stay.Angle, horizontal));
}
