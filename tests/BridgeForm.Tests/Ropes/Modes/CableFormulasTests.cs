using BridgeForm.Ropes.Modes;

namespace BridgeForm.Tests.Ropes.Modes;

public sealed class CableFormulasTests
{
    /// <summary>Irvine and Caughey 1974: roots of tan x = x − (4/λ²)x³, and the limits π and 2.8606π they print.</summary>
    [Theory]
    [InlineData(1e-9, Math.PI, 1e-6)]
    [InlineData(1, 3.267886, 1e-6)]
    [InlineData(4, 3.618558, 1e-6)]
    [InlineData(10, 4.225833, 1e-6)]
    [InlineData(20, 5.056508, 1e-6)]
    [InlineData(39.47841760435743, 6.283185, 1e-6)]
    [InlineData(60, 7.197271, 1e-6)]
    [InlineData(100, 8.159296, 1e-6)]
    [InlineData(1000, 8.948084, 1e-6)]
    [InlineData(1e12, 2.8606 * Math.PI, 1e-4)]
    public void Irvines_roots(double lambdaSquared, double root, double accuracy) =>
        Assert.Equal(root, CableFormulas.SymmetricRoot(lambdaSquared), accuracy);

    /// <summary>H C Verma, Concepts of Physics 1, example 15.7: 1.6 kg, g 10, 20 g per 0.5 m, 0.40 m: 25 Hz.</summary>
    [Fact]
    public void String_of_a_textbook() => Assert.Equal(25, CableFormulas.TautString(1, 0.40, 16, 0.04), 1e-9);

    /// <summary>With H = mgL²/8d, g 9.81: ½·√(g/8d) and √(g/8d); 2 m of sag: 0.3915 and 0.7830 Hz.</summary>
    [Fact]
    public void Hanging_string_depends_on_its_sag_alone()
    {
        var h = 100 * 9.81 * 40 * 40 / 8 / 2;
        Assert.Equal(0.3915, CableFormulas.TautString(1, 40, h, 100), 1e-4);
        Assert.Equal(0.7830, CableFormulas.TautString(2, 40, h, 100), 1e-4);
    }

    [Fact]
    public void Taut_cable_is_a_string() =>
        Assert.Equal(
            CableFormulas.TautString(1, 30, 5e5, 10), CableFormulas.Symmetric(30, 0.02, 5e5, 1e6, 10), 1e-3);
}
