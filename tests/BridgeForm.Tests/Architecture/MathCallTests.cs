using System.Numerics;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Tests.Architecture;

/// <summary>The same file gives the same bytes on every machine: nothing that is written may hang on a C library's last digit.</summary>
public sealed class MathCallTests
{
    [Fact]
    public void Sines_and_their_like_come_from_Elementary()
    {
        var calls = MathCalls.In(typeof(Bridge).Assembly.Location, typeof(Sheet).Assembly.Location);
        Assert.True(calls.Count == 0, string.Join('\n', calls));
    }

    /// <summary>Each kind of call, planted in this test's own assembly, is found with who makes it.</summary>
    [Fact]
    public void A_call_is_told_with_its_caller() =>
        Assert.Equal(
            [
                "AnyNumber calls System.Numerics.ITrigonometricFunctions`1::Sin", "AsFunction calls System.Math::Atan",
                "InLambda calls System.Math::Pow", "OfNumber calls System.Double::Hypot", "Plainly calls System.Math::Cos",
                "Products calls System.Numerics.Vector::Dot", "Rounded calls System.Math::FusedMultiplyAdd",
            ],
            MathCalls.In(typeof(PlantedCalls).Assembly.Location)
                .Where(c => c.Contains(nameof(PlantedCalls), StringComparison.Ordinal))
                .Select(c => c[(c.LastIndexOfAny(['.', '<'], c.IndexOf(' ')) + 1)..].Replace(">b__2_0", "", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal));

    /// <summary>Sums of doubles go from the first to the last: the library adds several at once only where the order is nothing.</summary>
    [Fact]
    public void A_sum_of_doubles_goes_in_order()
    {
        var random = new Random(4);
        double[] numbers = [.. Enumerable.Range(0, 1000).Select(_ => random.NextDouble() * Math.ScaleB(1, random.Next(60)))];
        var (sum, backwards) = (0.0, 0.0);
        for (var i = 0; i < numbers.Length; i++)
        {
            sum += numbers[i];
            backwards += numbers[^(i + 1)];
        }

        Assert.NotEqual(sum, backwards);
        Assert.Equal(sum, numbers.Sum());
        Assert.Equal(sum, numbers.ToList().Sum(n => n));
        Assert.Equal(sum / numbers.Length, numbers.Average());
    }
}

/// <summary>Calls what it may not, in each way in which that can be written.</summary>
internal static class PlantedCalls
{
    public static double Plainly(double x) => Math.Cos(x) + Math.Sqrt(Math.Abs(x));

    public static Func<double, double> AsFunction() => Math.Atan;

    public static double[] InLambda(double[] all) => [.. all.Select(x => Math.Pow(x, 3))];

    public static double OfNumber(double x) => double.Hypot(x, double.Max(x, 1));

    public static T AnyNumber<T>(T x)
        where T : ITrigonometricFunctions<T> => T.Sin(x);

    public static double Products(Vector<double> a) => Vector.Dot(a, a);

    public static double Rounded(double x) => Math.FusedMultiplyAdd(x, x, 1);
}
