using BridgeForm.Connections;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Checks.Timber;

/// <summary>
/// What one push on the guard asks of a joint, in the plane of the frame, right side: z outward, n up from the base's top. The strut
/// (post or brace) ends on the carrier (base or post).
/// </summary>
/// <param name="Push">On the guard.</param>
/// <param name="Frame">Where the brace's force lies.</param>
/// <param name="Whole">Of the strut on the carrier, newtons.</param>
/// <param name="At">Where it acts, metres.</param>
/// <param name="Into">Into the carrier, square to the face that the strut ends on.</param>
internal sealed record JointLoad(GuardPush Push, GuardFrame Frame, PlaneForce Whole, PlanePoint At, PlanePoint Into)
{
    /// <summary>The part that presses the strut's cut onto the carrier, newtons; 0 where it pulls. Wood carries that on wood.</summary>
    public double Pressed => Math.Max(0, Whole.Along(Into));

    /// <summary>What is left for the fasteners; friction carries nothing.</summary>
    public PlaneForce Held => new(Whole.Z - (Pressed * Into.Z), Whole.N - (Pressed * Into.N));

    /// <summary>Part that pulls the strut off the carrier, newtons.</summary>
    public double Pull => Math.Max(0, -Whole.Along(Into));

    /// <summary>Part along the carrier's face, newtons, without a sign.</summary>
    public double Shear => Math.Abs(Whole.Along(Into.Turned));

    /// <summary>
    /// All pushes, with a brace that is pressed in the middle of its contact and at its lower edge, and then on either edge of its foot
    /// too: what lifts the post hangs on how far from it the foot stands. One that is pulled hangs on its joints, on its axis.
    /// </summary>
    public static IEnumerable<JointLoad> List(BridgeLayout layout, BridgeParameters parameters, JointPlace place) =>
        GuardPush.WithWind(layout, parameters)
            .SelectMany(push => Frames(parameters, push).Select(frame => Find(parameters, place, push, frame)));

    private static IEnumerable<GuardFrame> Frames(BridgeParameters parameters, GuardPush push) =>
        push.Force > 0 ? push.OnBase(parameters) : [push.On(GuardFrame.Build(parameters))];

    private static JointLoad Find(BridgeParameters parameters, JointPlace place, GuardPush push, GuardFrame frame)
    {
        var down = new PlanePoint(0, -1);
        var (lifted, outward) = (frame.BraceDown(push.Force), frame.BraceOut(push.Force));
        if (place == JointPlace.PostFoot)
        {
            return new(push, frame, new(push.Force - outward, lifted), new(frame.PostFoot, 0), down);
        }

        if (place == JointPlace.BraceFoot)
        {
            return new(push, frame, new(outward, -lifted), new(frame.BraceFoot, 0), down);
        }

        var face = BraceGeometry.PostOuterFoot(parameters.Frames.Post) + (frame.Contact * Elementary.Tan(frame.Lean));
        var inward = new PlanePoint(-Elementary.Cos(frame.Lean), Elementary.Sin(frame.Lean));
        return new(push, frame, new(-outward, lifted), new(face, frame.Contact), inward);
    }
}
