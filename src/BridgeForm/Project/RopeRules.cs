using System.Globalization;
using BridgeForm.Materials;
using BridgeForm.Project.Reading;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>Defaults of the ropes: spacing, sag and the rope itself. Own figures (<see cref="DefaultRules"/>).</summary>
internal static class RopeRules
{
    // Taken where the file names no rope, and none that can be had.
    private const string Make = "rope-6x19-iwrc-eips-galvanized-";
    private const string MetricMake = "rope-6x19-iwrc-1770-";

    // Per length of span: 0.3 in a foot.
    private const double SpacingPerSpan = 0.025;
    private const double SagTimesSpacing = 0.0777;
    private const double LeastShare = 0.03;
    private const double MostShare = 0.08;

    // Where a base is shorter than what is kept beside the ropes.
    private const double MostOfBase = 0.75;

    /// <summary>
    /// Grows with the span, for a longer bridge rolls sooner; with ropes inside the braces' feet the underside of a base is in tension.
    /// </summary>
    public static string Spacing(FileValues v)
    {
        var tape = new RuleTape(v.Units);
        var least = v.Text("use") is "public" ? tape.Of(52, 1320) : tape.Of(49, 1245);
        var middle = FrameRules.BraceMiddle(v);
        var spacing = Math.Max(
            Rounding.Steps(least + (SpacingPerSpan * v.Number("site.span")), tape.Of(1, 10)) * tape.Of(1, 10),
            Rounding.Up(2 * Math.Max(middle, JointSection.RopeBeside(v, middle)), tape.Of(1, 10)));
        spacing = Math.Min(spacing, tape.Of(96, 2440));
        if (v.Given("frames.base.length"))
        {
            var length = v.Number("frames.base.length");
            spacing = Math.Min(spacing, Math.Max(length - tape.Of(14, 350), tape.Down(MostOfBase * length)));
        }

        return tape.Text(spacing, "ropes.spacing");
    }

    /// <summary>Ropes further apart tilt and roll less, and may hang flatter.</summary>
    public static string Sag(FileValues v)
    {
        var share = Math.Clamp(SagTimesSpacing / v.Number("ropes.spacing"), LeastShare, MostShare);
        return Rounding.ToDecimals(share * 100, 1).ToString(CultureInfo.InvariantCulture) + " %";
    }

    /// <summary>The thinnest that carries the estimate; the thickest where none does.</summary>
    public static string Rope(FileValues v, RopeCatalogue ropes)
    {
        var make = v.Units == UnitSystem.Metric ? MetricMake : Make;
        var onSale = v.Items("ropes.on_sale").Where(item => v.Good(item)).Select(v.Text).ToList();
        var keys = onSale.Exists(k => ropes.Find(k) is not null)
            ? onSale
            : ropes.Keys.Where(k => k.StartsWith(make, StringComparison.Ordinal));
        var sizes = keys.Select(ropes.Find).OfType<RopeProperties>().OrderBy(r => r.Diameter).ToList();
        var estimate = RopeEstimate.From(v);
        return (sizes.Find(estimate.IsCarriedBy) ?? sizes.LastOrDefault())?.Name ?? ropes.Keys[0];
    }
}
