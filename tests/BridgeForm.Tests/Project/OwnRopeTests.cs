using BridgeForm.Project.Files;

namespace BridgeForm.Tests.Project;

/// <summary>Numbers of a rope of one's own that fit each other, and just no longer.</summary>
public sealed class OwnRopeTests
{
    // By hand: steel of 0.27 in² weighs 0.27 · 7850 kg/m³ · 6.4516e-4 m²/in² / 1.48816 kg/m per lb/ft = 0.9188 lb/ft, nine tenths of it
    // 0.8270. Steel's modulus, 210 GPa, is 30,458 ksi (common practice, no source).
    [Theory]
    [InlineData("0.8271", "13500 ksi", null)]
    [InlineData("0.8269", "13500 ksi", "rope-too-light")]
    [InlineData("0.05", "13500 ksi", "rope-too-light")]
    [InlineData("1.04", "30457 ksi", null)]
    [InlineData("1.04", "30459 ksi", "rope-too-stiff")]
    [InlineData("1.04", "210 GPa", null)]
    [InlineData("1.04", "211 GPa", "rope-too-stiff")]
    public void Mass_and_modulus(string mass, string modulus, string? fault)
    {
        var rope = $"{{ diameter: 3/4 in, mass_per_length: {mass} lb/ft, breaking_strength: 52000 lbf, metallic_area: 0.27 in2, "
            + $"modulus: {modulus}, source: invented }}";
        var reading = ProjectReader.Read(
            Bridges.Garden.Replace("rope-6x19-iwrc-eips-galvanized-3/4", rope, StringComparison.Ordinal), "test.yaml", Bridges.Catalogue);
        Assert.Equal(fault is { } code ? [code] : Array.Empty<string>(), reading.Faults.Select(f => f.Code));
    }
}
