using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// Post and brace of one side in the plane of the frame: the post pinned at its foot and stiff past the brace, the brace
/// pinned at its foot, its head bearing on the post's outer face. Metres; z outward from the middle, n up from the base's top.
/// </summary>
/// <param name="PostFoot">z of the post's axis at the base's top.</param>
/// <param name="BraceFoot">z of the brace's axis at the base's top.</param>
/// <param name="Contact">n of the place on the post's outer face where the resultant of the brace's force lies.</param>
/// <param name="Top">n of the cap's top, where people push.</param>
/// <param name="Lean">Of the post, outward, radians (α).</param>
/// <param name="BraceLean">Of the brace's force, inward, radians: β where it lies on the brace's axis.</param>
/// <param name="OffAxis">How far the resultant lies off the brace's axis at its head, metres.</param>
/// <param name="Where">The place in a person's words.</param>
internal sealed record GuardFrame(
    double PostFoot, double BraceFoot, double Contact, double Top, double Lean, double BraceLean, double OffAxis, string Where)
{
    private const string LowerEdge = "at the lower edge of the brace's contact";

    /// <summary>The resultant on the brace's axis, in the middle of its contact with the post's outer face.</summary>
    public static GuardFrame Build(BridgeParameters parameters)
    {
        return At(parameters, 0, "in the middle of the brace's contact");
    }

    /// <summary>The resultant at the lowest place where the brace still touches the post, should the cut not lie tight.</summary>
    public static GuardFrame AtLowerEdge(BridgeParameters parameters)
    {
        return At(parameters, parameters.Frames.Brace.Section.Width / 2, LowerEdge);
    }

    /// <summary>Both places; whichever is worse counts.</summary>
    public static IEnumerable<GuardFrame> Places(BridgeParameters parameters) => [Build(parameters), AtLowerEdge(parameters)];

    /// <summary>
    /// What the base feels: both places of the head; a foot that is pressed stands on the inner or the outer edge of its cut too,
    /// should that not lie tight, for a base whose rope lies under it is sheared at the channel by what stands beside the rope. A
    /// foot that is pulled hangs on its joint, in its middle.
    /// </summary>
    /// <param name="parameters">The bridge.</param>
    /// <param name="push">At the guard's top, outward positive.</param>
    public static IEnumerable<GuardFrame> OnBase(BridgeParameters parameters, double push)
    {
        var brace = parameters.Frames.Brace;
        var half = brace.Section.Width / 2;
        return push <= 0 ? Places(parameters) :
        [
            .. Places(parameters),
            At(parameters, half, LowerEdge, -half / Elementary.Cos(brace.Lean)) with { After = ", brace on its foot's inner edge" },
            At(parameters, half, LowerEdge, half / Elementary.Cos(brace.Lean)) with { After = ", brace on its foot's outer edge" },
        ];
    }

    /// <summary>What follows the name of a load whose resultant does not lie on the brace's axis.</summary>
    public string After { get; private init; } = OffAxis > 0 ? ", brace at its lower edge" : "";

    /// <summary>Arm of the brace's force about the post's foot, metres.</summary>
    public double BraceArm => (BraceFoot - PostFoot) * Elementary.Cos(BraceLean);

    /// <summary>Axial force in the brace under a level push at the top (outward positive), newtons; pressed positive.</summary>
    public double Brace(double push) => push * Top / BraceArm;

    /// <summary>Part of the brace's force that presses its foot down, newtons.</summary>
    public double BraceDown(double push) => Brace(push) * Elementary.Cos(BraceLean);

    /// <summary>Part of the brace's force that pushes its foot outward, newtons.</summary>
    public double BraceOut(double push) => Brace(push) * Elementary.Sin(BraceLean);

    /// <summary>Largest bending of the post, just above the resultant, push · (top − contact), or just below it; N·m, no sign.</summary>
    public double PostMoment(double push) => Math.Max(
        Math.Abs(push) * Math.Max(0, Top - Contact), Math.Abs(Below(push, Contact)));

    /// <summary>Bending of the post at n, N·m, no sign.</summary>
    public double PostMoment(double push, double n) => n > Contact
        ? Math.Abs(push) * Math.Max(0, Top - n)
        : Math.Abs(Below(push, Math.Max(0, n)));

    /// <summary>Largest bending of the post between two n, N·m, no sign.</summary>
    public double PostMoment(double push, double from, double to) => from <= Contact && Contact <= to
        ? PostMoment(push)
        : Math.Max(PostMoment(push, from), PostMoment(push, to));

    /// <summary>Largest shear of the post, square to it, newtons: below the brace, or above it.</summary>
    public double PostShear(double push) => PostShear(push, 0, double.PositiveInfinity);

    /// <summary>Largest shear of the post between two n, newtons: below the brace's force, above it, or both.</summary>
    public double PostShear(double push, double from, double to)
    {
        var (above, below) = (Math.Abs(push) * Elementary.Cos(Lean), Math.Abs(push * (Top - Axes) / Axes) * Elementary.Cos(Lean));
        return to < Axes ? below : from > Axes ? above : Math.Max(above, below);
    }

    /// <summary>n where the brace's force crosses the post's axis.</summary>
    public double Axes => (BraceFoot - PostFoot) / (Elementary.Tan(Lean) + Elementary.Tan(BraceLean));

    // In proportion to n from the pinned foot, as if to push · (top − n) where the axes meet.
    private double Below(double push, double n) => push * (Top - Axes) * n / Axes;

    /// <summary>Axial force in the post below the brace, newtons; pulled positive: what the brace lifts, along the axis.</summary>
    public double PostPull(double push) => (BraceDown(push) * Elementary.Cos(Lean)) + ((push - BraceOut(push)) * Elementary.Sin(Lean));

    // Where a line along the brace, so far inside its axis, meets the post's outer face.
    // What the foot's force stands outward of the middle of its cut, along the base, moves the force and not the contact at the head.
    private static GuardFrame At(BridgeParameters parameters, double offAxis, string where, double outward = 0)
    {
        var (post, brace) = (parameters.Frames.Post, parameters.Frames.Brace);
        var face = BraceGeometry.PostOuterFoot(post);
        var foot = brace.Foot - (brace.Section.Width / 2 / Elementary.Cos(brace.Lean));
        var contact = (foot - (offAxis / Elementary.Cos(brace.Lean)) - face) / (Elementary.Tan(post.Lean) + Elementary.Tan(brace.Lean));
        return new GuardFrame(
            Uprights.AxisFoot(post),
            foot + outward,
            contact,
            (post.Length * Elementary.Cos(post.Lean)) + parameters.Guard.Cap.Thickness,
            post.Lean,
            Elementary.Atan2(foot + outward - face - (contact * Elementary.Tan(post.Lean)), contact),
            offAxis,
            where);
    }
}

/// <summary>A level push or pull at the guard's top.</summary>
/// <param name="Name">In a person's words.</param>
/// <param name="Force">Newtons on one post; outward positive.</param>
/// <param name="Frame">The frame that is meant: towards A of the longest bay where a load lies along that, else the first.</param>
internal sealed record GuardPush(string Name, double Force, int Frame = 0)
{
    /// <summary>Over the base's top, metres; null for the guard's top.</summary>
    public double? Height { get; init; }

    /// <summary>Post and brace with this push where it acts.</summary>
    public GuardFrame On(GuardFrame frame) => Height is { } height ? frame with { Top = height } : frame;

    /// <summary>The frames of <see cref="GuardFrame.Places"/> with this push where it acts.</summary>
    public IEnumerable<GuardFrame> Places(BridgeParameters parameters) => GuardFrame.Places(parameters).Select(On);

    /// <summary>The frames of <see cref="GuardFrame.OnBase"/> with this push where it acts.</summary>
    public IEnumerable<GuardFrame> OnBase(BridgeParameters parameters) => GuardFrame.OnBase(parameters, Force).Select(On);

    private const double Pound = Quantities.Units.PoundForce;

    /// <summary>Concentrated load at the top of a guard, newtons.</summary>
    public const double Point = 200 * Pound;

    /// <summary>Load on a public guard's top, N/m.</summary>
    public const double Line = Loads.GuardLean.Line;

    /// <summary>Source of both.</summary>
    public const string Source =
        "IRC Table R301.5 and ASCE 7 4.5.1: 200 lbf (890 N) at the top in any direction; IBC 1607.8.1: 50 plf (730 N/m) on a public "
            + "guard";

    /// <summary>Both directions; on a public bridge the line load as well, each by itself. All of it on one post.</summary>
    public static IEnumerable<GuardPush> List(CheckContext context) => List(context.Layout, context.Parameters);

    /// <summary>
    /// The same, and wind on the guard where it pushes or bends more: people and wind each by themselves. The wind is taken at the middle
    /// of what it blows against, which is what feet, braces and joints feel; and once more at the guard's top, less by so much that it
    /// turns the foot alike, for that bends a post above its brace more than a wind that is spread over it.
    /// </summary>
    public static IEnumerable<GuardPush> WithWind(BridgeLayout layout, BridgeParameters parameters)
    {
        var people = List(layout, parameters).ToList();
        var (force, height) = GuardWind.OnPost(layout, parameters);
        var (top, most) = (GuardFrame.Build(parameters).Top, people.Max(p => Math.Abs(p.Force)));
        if (force <= most && force * height <= most * top)
        {
            return people;
        }

        var words = new CheckWords(parameters.Units);
        var bay = BaseCases.Longest(layout);
        GuardPush Blows(string way, double sign, double f, double? at) => new(
            $"wind of {words.Pressure(parameters.Loads.Wind)} on the guard {way}, {words.Pounds(f)} "
                + (at is { } h ? $"{words.Length(h)} over the base" : "at its top"), sign * f, bay - 1)
        { Height = at };
        return
        [
            .. people,
            Blows("outward", 1, force, height), Blows("inward", -1, force, height),
            Blows("outward", 1, force * height / top, null), Blows("inward", -1, force * height / top, null),
        ];
    }

    /// <summary>The same before anything is known but where all lies.</summary>
    public static IEnumerable<GuardPush> List(BridgeLayout layout, BridgeParameters parameters)
    {
        var words = new CheckWords(parameters.Units);
        var point = words.Pounds(Point);
        yield return new($"{point} outward", Point);
        yield return new($"{point} inward", -Point);
        if (parameters.Use == BridgeUse.Public)
        {
            var (apart, _, bay) = CapSpans.Longest(layout);
            var line = $"{words.PerFoot(Line)} on {words.Length(apart)} = {words.Pounds(Line * apart)}";
            yield return new(line + " outward", Line * apart, bay - 1);
            yield return new(line + " inward", -Line * apart, bay - 1);
        }
    }
}
