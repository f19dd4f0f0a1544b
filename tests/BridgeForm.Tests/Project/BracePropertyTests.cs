using CsCheck;

namespace BridgeForm.Tests.Project;

/// <summary>
/// Braces that the reader takes are those that can be drawn: edges as lines, met by plane geometry apart from the program's
/// formulas.
/// </summary>
public sealed class BracePropertyTests
{
    private const double Wide = 3.5;
    private const double HalfBase = 40;
    private const double Unclear = 1e-6;

    private static readonly Gen<(double PostFoot, double PostLean, double PostLength, double Lean, double Foot)> Frame =
        Gen.Select(Gen.Double[8, 25], Gen.Double[1, 30], Gen.Double[20, 60], Gen.Double[0, 60], Gen.Double[10, 45]);

    [Fact]
    public void A_brace_is_taken_when_it_can_be_drawn() => Frame.Sample(
        f =>
        {
            var margin = Margin(f.PostFoot, f.PostLean * Math.PI / 180, f.PostLength, f.Lean * Math.PI / 180, f.Foot);
            return Math.Abs(margin) < Unclear || (margin > 0) == (Examples.Read(Text(f)).Faults.Length == 0);
        },
        iter: 2000);

    [Fact]
    public void The_length_of_a_brace_is_the_distance_between_its_long_points() => Frame.Sample(
        f =>
        {
            var (a, b) = (f.PostLean * Math.PI / 180, f.Lean * Math.PI / 180);
            if (Margin(f.PostFoot, a, f.PostLength, b, f.Foot) < Unclear)
            {
                return true;
            }

            var (z, n) = Meet((f.PostFoot + (Wide / Math.Cos(a)), a), (f.Foot, -b));
            var length = Math.Sqrt(((f.Foot - z) * (f.Foot - z)) + (n * n));
            return Math.Abs(Examples.Good(Text(f)).Frames.Brace.Length - (length * 0.0254)) < 1e-9;
        },
        iter: 500);

    private static string Text((double PostFoot, double PostLean, double PostLength, double Lean, double Foot) f) =>
        FormattableString.Invariant(
        $$"""
        name: a
        site: { span: 30 ft }
        frames:
          base: { length: 80 in }
          post: { foot: {{f.PostFoot:R}} in, lean: {{f.PostLean:R}} deg, length: {{f.PostLength:R}} in }
          brace: { lean: {{f.Lean:R}} deg, foot: {{f.Foot:R}} in }
        guard: { rails: { count: 1 } }
        """);

    // Inches by which the frame is clear of the nearest reason to refuse it; negative when it must be refused.
    private static double Margin(double postFoot, double a, double postLength, double b, double foot)
    {
        var postOuter = (postFoot + (Wide / Math.Cos(a)), a);
        var innerFoot = foot - (Wide / Math.Cos(b));
        var (_, meetsInner) = Meet(postOuter, (innerFoot, -b));
        var (_, meetsOuter) = Meet(postOuter, (foot, -b));
        var head = postLength * Math.Cos(a);
        return new[] { meetsInner, head - meetsOuter, HalfBase - foot, HalfBase - postOuter.Item1 }.Min();
    }

    // Where two lines from the base's top cross: each by its foot and its lean outward.
    private static (double Z, double N) Meet((double Foot, double Lean) p, (double Foot, double Lean) q)
    {
        var n = (q.Foot - p.Foot) / (Math.Tan(p.Lean) - Math.Tan(q.Lean));
        return (p.Foot + (n * Math.Tan(p.Lean)), n);
    }
}
