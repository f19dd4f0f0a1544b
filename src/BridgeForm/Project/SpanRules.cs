using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>What span, rise, sag and the distance of the frames must agree on.</summary>
internal static class SpanRules
{
    /// <summary>Beyond this a walkway is a stair; the shape is no longer a footbridge's.</summary>
    private const double LargestSag = 0.30;

    /// <summary>Flatter ropes than this carry tensions beyond any rope.</summary>
    private const double SmallestSag = 0.0005;

    /// <summary>Support B above or below A, per length of span.</summary>
    private const double LargestRise = 1.0 / 3;

    /// <summary>Slope of the deck at its steeper end, as of a parabola: 45°, past which frames square to the rope cannot stand.</summary>
    private const double LargestEndSlope = 1;

    private const int LeastBays = 2;

    public static void Check(CheckedFile f)
    {
        if (!f.Good("site.span"))
        {
            return;
        }

        var sagFits = f.Good("ropes.sag") && Sag(f);
        var riseFits = f.Good("site.rise") && Rise(f);
        if (sagFits && riseFits)
        {
            EndSlope(f);
            Frames(f);
        }
    }

    /// <summary>Length of a parabola of that span, rise and sag, metres: to second order, enough to count frames.</summary>
    public static double RopeLength(BridgeParameters p) => RopeLength(p.Site.Span, p.Site.Rise, p.Ropes.Sag);

    /// <summary>The same of any parabola.</summary>
    public static double RopeLength(double span, double rise, double sag)
    {
        var chord = Math.Sqrt((span * span) + (rise * rise));
        var ratio = sag / span;
        return chord * (1 + (8.0 / 3 * ratio * ratio));
    }

    /// <summary>The deepest sag that a project file may ask for at this span and rise, metres.</summary>
    public static double DeepestSag(SiteParameters site) =>
        Math.Min(LargestSag * site.Span, ((LargestEndSlope * site.Span) - Math.Abs(site.Rise)) / 4);

    private static bool Sag(CheckedFile f)
    {
        var (span, sag) = (f.Parameters.Site.Span, f.Parameters.Ropes.Sag);
        if (sag >= SmallestSag * span && sag <= LargestSag * span)
        {
            return true;
        }

        f.Stop(FaultCode.SagOutOfRange, "ropes.sag", $"sag: '{f.Written("ropes.sag")}' is out of range; allowed is 0.05 % to 30 % of the "
            + $"span, here {f.LongAtLeast(SmallestSag * span)} to {f.LongAtMost(LargestSag * span)}");
        return false;
    }

    private static bool Rise(CheckedFile f)
    {
        var most = LargestRise * f.Parameters.Site.Span;
        if (Math.Abs(f.Parameters.Site.Rise) <= most + Tolerances.RoundOff)
        {
            return true;
        }

        f.Stop(FaultCode.RiseTooSteep, "site.rise", $"rise: '{f.Written("site.rise")}' is steeper than 1 in 3; over this span at most "
            + $"{f.LongAtMost(most)} up or down");
        return false;
    }

    private static void EndSlope(CheckedFile f)
    {
        var (span, rise, sag) = (f.Parameters.Site.Span, Math.Abs(f.Parameters.Site.Rise), f.Parameters.Ropes.Sag);
        var slope = ((4 * sag) + rise) / span;
        if (slope > LargestEndSlope + Tolerances.RoundOff)
        {
            var most = ((LargestEndSlope * span) - rise) / 4;
            f.Stop(FaultCode.EndSlopeTooSteep, "ropes.sag", $"sag: with '{f.Written("ropes.sag")}' the deck's steeper end slopes "
                + $"{QuantityText.Degrees(Elementary.Atan(slope))}, more than 45 deg; with this rise sag is at most {f.LongAtMost(most)} "
                + $"({CheckedFile.ShareAtMost(most / span)})", "site.rise");
        }
    }

    private static void Frames(CheckedFile f)
    {
        if (!f.Good("frames.spacing"))
        {
            return;
        }

        var p = f.Parameters;
        var length = p.Frames.Step == FrameStep.Plan ? p.Site.Span : RopeLength(p);
        var bays = Math.Ceiling((length / p.Frames.Spacing) - Tolerances.RoundOff);
        if (bays + 1 > ProjectKeys.MostFrames)
        {
            f.Stop(FaultCode.TooManyFrames, "frames.spacing", FormattableString.Invariant($"spacing: '{f.Written("frames.spacing")}' over ")
                + FormattableString.Invariant($"this span gives {bays + 1:0} frames, more than {ProjectKeys.MostFrames}; write at least ")
                + FormattableString.Invariant($"{f.AtLeast(length / (ProjectKeys.MostFrames - 1))}"), "site.span");
        }
        else if (bays < LeastBays)
        {
            f.Stop(FaultCode.NoFrameBetween, "frames.spacing", $"spacing: '{f.Written("frames.spacing")}' leaves no frame between the two "
                + $"end frames; write less than {f.AtMost(length)}", "site.span");
        }

        if (f.Good("frames.base.section", "frames.base.flat") && p.Frames.Base.Along >= p.Frames.Spacing)
        {
            f.Stop(FaultCode.FramesTouch, "frames.spacing", $"spacing: '{f.Written("frames.spacing")}' is no more than the base's own size "
                + $"along the bridge, {f.Size(p.Frames.Base.Along)}; the frames would touch", "frames.base.section");
        }
    }
}
