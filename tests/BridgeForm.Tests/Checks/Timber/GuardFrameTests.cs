using BridgeForm.Checks;
using CsCheck;

namespace BridgeForm.Tests.Checks.Timber;

public sealed class GuardFrameTests
{
    private static readonly Gen<GuardFrame> s_frames = Gen.Select(
        Gen.Double[0.3, 0.7],
        Gen.Double[0.08, 0.3],
        Gen.Double[0.0, 0.25],
        Gen.Double[0.1, 0.5],
        Gen.Double[0.9, 1.3],
        (foot, apart, lean, braceLean, top) => new GuardFrame(
            foot, foot + apart, apart / (Math.Tan(lean) + Math.Tan(braceLean)), top, lean, braceLean));

    // Post cut free: push at the top, brace at the joint, base at the foot. Forces and moments about the foot come to nothing.
    [Fact]
    public void The_post_stands_still() => s_frames.Sample(
        frame =>
        {
            const double Push = 900;
            var brace = frame.Brace(Push);
            var z = frame.Joint * Math.Tan(frame.Lean);
            var (outward, up) = (-brace * Math.Sin(frame.BraceLean), brace * Math.Cos(frame.BraceLean));
            var aboutFoot = (z * up) - (frame.Joint * outward) - (frame.Top * Push);
            Assert.Equal(0, aboutFoot, 1e-6);

            // Bending just above the joint by what stands above it, and just below it by the foot's force.
            var footOutward = -(Push + outward);
            Assert.Equal(Math.Abs(frame.PostMoment(Push)), Math.Abs((footOutward * frame.Joint) - (-up * z)), 1e-6);

            // Axial force below the joint by the foot's force: it pulls down on the post by `up`.
            var pull = (up * Math.Cos(frame.Lean)) - (footOutward * Math.Sin(frame.Lean));
            Assert.Equal(pull, frame.PostPull(Push), 1e-6);
        });

    [Fact]
    public void Inward_is_the_mirror_of_outward() => s_frames.Sample(
        frame =>
        {
            Assert.Equal(frame.Brace(500), -frame.Brace(-500), 1e-9);
            Assert.Equal(frame.PostPull(500), -frame.PostPull(-500), 1e-9);
        });

    // 200 lbf on the demo's guard by hand: joint (26.456 − 20.017) / (tan 8° + tan 12°) = 18.23 in; brace 200·41.11/6.30.
    [Fact]
    public void The_demo_by_hand()
    {
        var frame = GuardFrame.Of(Bridges.Read(Bridges.Garden));
        const double Inch = 0.0254;
        Assert.Equal(18.25, frame.Joint / Inch, 0.01);
        Assert.Equal((40 * Math.Cos(Bridges.Radians(8))) + 1.5, frame.Top / Inch, 0.01);
        Assert.Equal(1305, frame.Brace(200), 1.0);
    }
}
