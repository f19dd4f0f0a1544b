using BridgeForm.Frames;
using BridgeForm.Project;

namespace BridgeForm.Checks;

/// <summary>
/// Post and brace of one side as two bars in the plane of the frame: the post pinned at its foot and stiff past the brace,
/// the brace pinned at both ends, both on their axes. Metres; z outward from the middle, n up from the base's top.
/// </summary>
/// <param name="PostFoot">z of the post's axis at the base's top.</param>
/// <param name="BraceFoot">z of the brace's axis at the base's top.</param>
/// <param name="Joint">n where the axes meet.</param>
/// <param name="Top">n of the cap's top, where people push.</param>
/// <param name="Lean">Of the post, outward, radians (α).</param>
/// <param name="BraceLean">Of the brace, inward, radians (β).</param>
internal readonly record struct GuardFrame(
    double PostFoot, double BraceFoot, double Joint, double Top, double Lean, double BraceLean)
{
    /// <summary>Of a project.</summary>
    public static GuardFrame Of(BridgeParameters parameters)
    {
        var (post, brace) = (parameters.Frames.Post, parameters.Frames.Brace);
        var postFoot = Uprights.AxisFoot(post);
        var braceFoot = brace.Foot - (brace.Section.Width / 2 / Math.Cos(brace.Lean));
        return new GuardFrame(
            postFoot,
            braceFoot,
            (braceFoot - postFoot) / (Math.Tan(post.Lean) + Math.Tan(brace.Lean)),
            (post.Length * Math.Cos(post.Lean)) + parameters.Guard.Cap.Thickness,
            post.Lean,
            brace.Lean);
    }

    /// <summary>Arm of the brace's force about the post's foot: joint · (tanα·cosβ + sinβ), metres.</summary>
    public double BraceArm => Joint * ((Math.Tan(Lean) * Math.Cos(BraceLean)) + Math.Sin(BraceLean));

    /// <summary>Axial force in the brace under a level push at the top (outward positive), newtons; pressed positive.</summary>
    public double Brace(double push) => push * Top / BraceArm;

    /// <summary>Part of the brace's force that presses its foot down, newtons.</summary>
    public double BraceDown(double push) => Brace(push) * Math.Cos(BraceLean);

    /// <summary>Part of the brace's force that pushes its foot outward, newtons.</summary>
    public double BraceOut(double push) => Brace(push) * Math.Sin(BraceLean);

    /// <summary>Bending of the post at the brace: push · (top − joint), N·m.</summary>
    public double PostMoment(double push) => push * (Top - Joint);

    /// <summary>Axial force in the post below the brace, newtons; pulled positive: what the brace lifts, along the axis.</summary>
    public double PostPull(double push) => (BraceDown(push) * Math.Cos(Lean)) + ((push - BraceOut(push)) * Math.Sin(Lean));
}

/// <summary>A level push or pull at the guard's top.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Force">Newtons on one post; outward positive.</param>
internal readonly record struct GuardPush(string Name, double Force)
{
    private const double Pound = Quantities.Units.PoundForce;

    /// <summary>Concentrated load at the top of a guard, newtons.</summary>
    public const double Point = 200 * Pound;

    /// <summary>Load on a public guard's top, N/m.</summary>
    public const double Line = 50 * Pound / 0.3048;

    /// <summary>Source of both.</summary>
    public const string Source =
        "IRC Table R301.5 and ASCE 7 4.5: 200 lbf at the top in any direction (from memory); IBC 1607.8.1: 50 plf on a public guard";

    /// <summary>Both directions; on a public bridge the line load as well, each by itself. All of it on one post.</summary>
    public static IEnumerable<GuardPush> Of(CheckContext context)
    {
        var words = context.People();
        var point = words.Pounds(Point);
        yield return new($"{point} outward", Point);
        yield return new($"{point} inward", -Point);
        if (context.Parameters.Use == BridgeUse.Public)
        {
            var apart = CapSpans.Longest(context.Layout).Length;
            var line = $"{words.PerFoot(Line)} on {words.Length(apart)} = {words.Pounds(Line * apart)}";
            yield return new(line + " outward", Line * apart);
            yield return new(line + " inward", -Line * apart);
        }
    }
}
