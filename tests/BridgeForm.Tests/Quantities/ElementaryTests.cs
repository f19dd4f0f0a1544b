using BridgeForm.Quantities;

namespace BridgeForm.Tests.Quantities;

/// <summary>Sines, logarithms and powers, in steps of the last digit, against long numbers, another program and the C library.</summary>
public sealed class ElementaryTests
{
    private static readonly double[] s_special =
    [
        0.0, -0.0, 1, -1, 0.5, -0.5, 2, -2, 3, -3, 1e-310, -1e-310, 1e-20, 1e300, -1e300, double.MaxValue, double.MinValue,
        double.Epsilon, double.PositiveInfinity, double.NegativeInfinity, double.NaN, 0.1, -7.5, 1024, 1025, -1025,
    ];

    /// <summary>π and e, their first fifty digits from memory.</summary>
    [Fact]
    public void Long_numbers_know_pi_and_e()
    {
        const string Pi = "31415926535897932384626433832795028841971693993751", E = "27182818284590452353602874713526624977572470936999";
        Assert.StartsWith(Pi, (LongNumber.Pi.Units * System.Numerics.BigInteger.Pow(10, 60) / LongNumber.One.Units).ToString());
        Assert.StartsWith(E, (LongNumber.One.Exp().Units * System.Numerics.BigInteger.Pow(10, 60) / LongNumber.One.Units).ToString());
        Assert.Equal(0.5, LongNumber.One.Steps(Math.BitDecrement(1)));
    }

    // Half a step is what rounding alone may take.
    [Theory]
    [InlineData("sin", 0.60)]
    [InlineData("cos", 0.60)]
    [InlineData("tan", 0.65)]
    [InlineData("asin", 0.51)]
    [InlineData("atan", 0.51)]
    [InlineData("atan2", 0.51)]
    [InlineData("asinh", 0.52)]
    [InlineData("atanh", 0.51)]
    [InlineData("log", 0.51)]
    [InlineData("log10", 0.51)]
    [InlineData("pow", 0.60)]
    [InlineData("hypot", 0.51)]
    public void No_value_is_further_off_than_told(string function, double steps)
    {
        var random = new Random(11);
        var (worst, x, y) = (0.0, 0.0, 0.0);
        for (var i = 0; i < 800; i++)
        {
            var (a, b) = Arguments(function, random, i);
            if (Long(function, LongNumber.Of(a), LongNumber.Of(b)).Steps(Ours(function, a, b)) is var off && !(off <= worst))
            {
                (worst, x, y) = (off, a, b);
            }
        }

        Assert.True(worst <= steps, $"{function}({x:R}, {y:R}) is {worst:0.000} steps off");
        Assert.True(worst > 0.4, "too good to be true");
    }

    [Fact]
    public void Values_are_those_of_another_program() =>
        Assert.Empty(
            from v in ElementaryValues.All()
            let ours = Ours(v.Function, v.X, v.Y)
            where Int128.Abs(Place(ours) - Place(v.Value)) > 1
            select $"{v.Function}({v.X:R}, {v.Y:R}) is {ours:R}, not {v.Value:R}");

    /// <summary>A million arguments: the C library's values, which are below one step off, and ours differ by two steps at most.</summary>
    [Fact]
    public void The_C_library_says_the_same()
    {
        var random = new Random(3);
        string[] functions = ["sin", "cos", "tan", "asin", "atan", "atan2", "asinh", "atanh", "log", "log10", "pow", "hypot"];
        foreach (var function in functions)
        {
            for (var i = 0; i < 1_000_000 / functions.Length; i++)
            {
                var (a, b) = Arguments(function, random, i);
                var (ours, theirs) = (Ours(function, a, b), Theirs(function, a, b));
                Assert.True(
                    ours.Equals(theirs) || Int128.Abs(Place(ours) - Place(theirs)) <= 2, $"{function}({a:R}, {b:R}): {ours:R}, {theirs:R}");
            }
        }
    }

    /// <summary>Zeros with their signs, infinities, NaN, the ends of the doubles, each with each.</summary>
    [Fact]
    public void Special_cases_are_those_of_the_C_library() =>
        Assert.Empty(
            from function in (string[])["sin", "cos", "tan", "asin", "atan", "atan2", "asinh", "atanh", "log", "log10", "pow", "hypot"]
            from x in s_special
            from y in function is "atan2" or "pow" or "hypot" ? s_special : [0.0]
            let ours = Ours(function, x, y)
            let theirs = Theirs(function, x, y)
            where !(double.IsNaN(ours) && double.IsNaN(theirs))
                && (double.IsNegative(ours) != double.IsNegative(theirs) || !(Int128.Abs(Place(ours) - Place(theirs)) <= 1))
            select $"{function}({x:R}, {y:R}) is {ours:R}, not {theirs:R}");

    [Fact]
    public void Both_at_once_are_the_same_as_each()
    {
        var random = new Random(8);
        foreach (var x in s_special.Concat(Enumerable.Range(0, 1000).Select(i => Arguments("sin", random, i).X)))
        {
            Assert.Equal((Elementary.Sin(x), Elementary.Cos(x)), Elementary.SinCos(x));
        }
    }

    /// <summary>Powers of ten are what the reader makes of 1e7 and 1e-7, and their logarithms are whole.</summary>
    [Fact]
    public void Powers_of_ten_are_decimals()
    {
        for (var n = -300; n <= 300; n++)
        {
            var text = double.Parse($"1e{n}", System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(Int128.Abs(Place(Elementary.PowerOfTen(n)) - Place(text)) <= (Math.Abs(n) <= 22 ? 0 : 1), text.ToString("R"));
            Assert.Equal(n, Elementary.Log10(text));
        }
    }

    /// <summary>The same to the last bit, whatever the machine: bits of a thousand values, added up.</summary>
    [Fact]
    public void Bits_are_the_same_on_every_machine()
    {
        var random = new Random(1);
        var sum = 0UL;
        foreach (var function in (string[])["sin", "cos", "tan", "asin", "atan", "atan2", "asinh", "atanh", "log", "log10", "pow", "hypot"])
        {
            for (var i = 0; i < 1000; i++)
            {
                var (a, b) = Arguments(function, random, i);
                sum = (sum * 31) + BitConverter.DoubleToUInt64Bits(Ours(function, a, b));
            }
        }

        Assert.Equal(1377851350086573017UL, sum);
    }

    private static double Ours(string function, double x, double y) => function switch
    {
        "sin" => Elementary.Sin(x),
        "cos" => Elementary.Cos(x),
        "tan" => Elementary.Tan(x),
        "asin" => Elementary.Asin(x),
        "atan" => Elementary.Atan(x),
        "atan2" => Elementary.Atan2(x, y),
        "asinh" => Elementary.Asinh(x),
        "atanh" => Elementary.Atanh(x),
        "log" => Elementary.Log(x),
        "log10" => Elementary.Log10(x),
        "pow" => Elementary.Pow(x, y),
        _ => Elementary.Hypot(x, y),
    };

    private static double Theirs(string function, double x, double y) => function switch
    {
        "sin" => Math.Sin(x),
        "cos" => Math.Cos(x),
        "tan" => Math.Tan(x),
        "asin" => Math.Asin(x),
        "atan" => Math.Atan(x),
        "atan2" => Math.Atan2(x, y),
        "asinh" => Math.Asinh(x),
        "atanh" => Math.Atanh(x),
        "log" => Math.Log(x),
        "log10" => Math.Log10(x),
        "pow" => Math.Pow(x, y),
        _ => double.Hypot(x, y),
    };

    private static LongNumber Long(string function, LongNumber x, LongNumber y) => function switch
    {
        "sin" => x.Sin(),
        "cos" => x.Cos(),
        "tan" => x.Sin() / x.Cos(),
        "asin" => (x / (LongNumber.One - (x * x)).Root()).Atan(),
        "atan" => x.Atan(),
        "atan2" => y.Units > 0 ? (x / y).Atan() : (x / y).Atan() + (x.Units > 0 ? LongNumber.Pi : new(-LongNumber.Pi.Units)),
        "asinh" => (x + (LongNumber.One + (x * x)).Root()).Log(),
        "atanh" => new(((LongNumber.One + x) / (LongNumber.One - x)).Log().Units / 2),
        "log" => x.Log(),
        "log10" => x.Log() / LongNumber.Of(10).Log(),
        "pow" => (y * x.Log()).Exp(),
        _ => ((x * x) + (y * y)).Root(),
    };

    // By turns: of one's own size, of every size that angles, ratios and lengths have here, and next to where digits cancel.
    private static (double X, double Y) Arguments(string function, Random random, int i)
    {
        var (even, wide) = ((2 * random.NextDouble()) - 1, Math.ScaleB((2 * random.NextDouble()) - 1, random.Next(-30, 17)));
        var other = Math.ScaleB((2 * random.NextDouble()) - 1, random.Next(-9, 9));
        return function switch
        {
            "sin" or "cos" or "tan" => ((i % 4) switch
            {
                0 => even,
                1 => 10 * even,
                2 => wide,
                _ => random.Next(1, 60000) * (Math.PI / 2),
            }, 0),
            "asin" or "atanh" => ((i % 3) switch
            {
                0 => even,
                1 => Math.ScaleB(even, random.Next(-30, 0)),
                _ => 1 - Math.Abs(even / 1000),
            }, 0),
            "log" or "log10" => (Math.Abs((i % 3) switch { 0 => 2 * even, 1 => wide, _ => 1 + (even / 1000) }), 0),
            "pow" => i % 2 == 0 ? (Math.Abs(2 * even), 10 * other / 512) : (Math.Abs(other), random.Next(-12, 12)),
            "atan2" or "hypot" => i % 2 == 0 ? (even, other) : (wide, other),
            _ => (i % 2 == 0 ? 3 * even : wide, 0),
        };
    }

    // Doubles in the order of their size, counted from zero.
    private static Int128 Place(double number) =>
        BitConverter.DoubleToInt64Bits(number) is var bits && bits < 0 ? -(Int128)(bits & long.MaxValue) : bits;
}
