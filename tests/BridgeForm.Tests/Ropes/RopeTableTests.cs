using BridgeForm.Materials;

namespace BridgeForm.Tests.Ropes;

public sealed class RopeTableTests
{
    public static TheoryData<string> Makes => [.. RopeTable.Keys.Select(Make).Distinct(StringComparer.Ordinal)];

    [Theory]
    // ASTM A475 EHS 1/4 in: 6650 lbf; a 3/4 in rope 6x19 IWRC: 25.6 and 29.4 short tons; cord: FAA AC 43.13-1B table 7-3.
    [InlineData("strand-ehs-1/4", 6650)]
    [InlineData("strand-ehs-galvanized-1/4", 6650)]
    [InlineData("rope-6x19-iwrc-ips-3/4", 51200)]
    [InlineData("rope-6x19-iwrc-eips-3/4", 58800)]
    [InlineData("rope-6x19-iwrc-eips-galvanized-3/4", 52920)]
    [InlineData("cord-7x19-3/16", 4200)]
    [InlineData("rope-6x19-iwrc-eips-1-1/8", 130000)]
    public void Strength_is_the_published_one(string key, double poundsForce)
    {
        Assert.True(RopeTable.TryFind(key, out var rope));
        RopeSamples.Close(poundsForce * 4.4482216152605, rope.BreakingStrength, 1e-12);
    }

    // EN 12385-4 by hand: K·d²·Rr/1000 kN; W·d²/100 kg/m; C·d² mm². 6x19 and 6x36 IWRC: K 0.356; W 0.400, 0.409; C 0.449, 0.460.
    // 16 mm, 1770: 0.356·256·1770 = 161 311 N; 20 mm, 1960: 0.356·400·1960 = 279 104 N; 8 mm: 0.356·64·1770 = 40 328 N.
    [Theory]
    [InlineData("rope-6x19-iwrc-1770-16-mm", 161_311, 1.024, 114.9)]
    [InlineData("rope-6x19-iwrc-1960-20-mm", 279_104, 1.6, 179.6)]
    [InlineData("rope-6x36-iwrc-1770-16-mm", 161_311, 1.047, 117.8)]
    [InlineData("rope-6x36-iwrc-1960-40-mm", 1_116_416, 6.544, 736)]
    [InlineData("rope-6x19-iwrc-1770-8-mm", 40_328, 0.256, 28.7)]
    public void Metric_ropes_follow_the_factors_of_their_class(string key, double newtons, double mass, double squareMillimetres)
    {
        var rope = Find(key);
        Assert.Equal(newtons, rope.BreakingStrength, 0.5);
        Assert.Equal(mass, rope.MassPerLength, 5e-4);
        Assert.Equal(squareMillimetres, rope.MetallicArea * 1e6, 0.06);
        Assert.True(rope.Galvanized);
        Assert.Equal(key.Split('-')[^2], (rope.Diameter * 1000).ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Contains("EN 12385-4", rope.Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("strand-ehs-1/8", 0.0092)]
    [InlineData("strand-ehs-3/16", 0.0210)]
    [InlineData("strand-ehs-5/16", 0.0594)]
    [InlineData("strand-ehs-1/2", 0.1496)]
    public void Strand_area_is_that_of_its_seven_wires(string key, double squareInches)
    {
        Assert.True(RopeTable.TryFind(key, out var rope));
        Assert.Equal(squareInches, rope.MetallicArea / (0.0254 * 0.0254), 4);
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public void Strength_weight_and_area_grow_with_diameter(string make)
    {
        var sizes = Of(make);
        Assert.True(sizes.Length > 5);
        foreach (var (thin, thick) in sizes.Zip(sizes.Skip(1)))
        {
            Assert.True(thin.Diameter < thick.Diameter, thick.Name);
            Assert.True(thin.BreakingStrength < thick.BreakingStrength, thick.Name);
            Assert.True(thin.MassPerLength < thick.MassPerLength, thick.Name);
            Assert.True(thin.MetallicArea < thick.MetallicArea, thick.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public void Weight_is_that_of_the_steel_and_a_little_for_lay_zinc_and_lubricant(string make)
    {
        foreach (var rope in Of(make))
        {
            Assert.InRange(rope.MassPerLength / (rope.MetallicArea * SteelRope.SteelDensity), 0.98, 1.16);
        }
    }

    [Theory]
    [MemberData(nameof(Makes))]
    public void Stress_at_breaking_is_that_of_drawn_wire(string make)
    {
        foreach (var rope in Of(make))
        {
            Assert.InRange(rope.BreakingStrength / rope.MetallicArea, 1.0e9, 2.1e9);
            Assert.InRange(rope.Modulus, 85e9, 170e9);
            Assert.True(rope.MetallicArea < Math.PI * rope.Radius * rope.Radius);
            Assert.NotEmpty(rope.Source);
        }
    }

    [Theory]
    [InlineData("rope-6x19-iwrc-eips-11/16")]
    [InlineData("strand-ehs-15/32")]
    [InlineData("cord-7x19-galvanized-1/4")]
    [InlineData("rope-6x19-iwrc-1770-15-mm")]
    [InlineData("rope-6x19-iwrc-1770-16")]
    [InlineData("ROPE-6X19-IWRC-EIPS-3/4")]
    public void Sizes_between_rows_do_not_exist(string key) => Assert.False(RopeTable.TryFind(key, out _));

    [Fact]
    public void Thicker_ropes_are_of_the_same_make()
    {
        Assert.Equal(
            "rope-6x19-iwrc-ips-galvanized-1-1/4 rope-6x19-iwrc-ips-galvanized-1-3/8 rope-6x19-iwrc-ips-galvanized-1-1/2",
            string.Join(' ', RopeTable.Thicker(Find("rope-6x19-iwrc-ips-galvanized-1-1/8")).Select(r => r.Name)));
        Assert.Empty(RopeTable.Thicker(Find("cord-7x19-3/8")));
        Assert.Equal(
            "rope-6x19-iwrc-1770-36-mm rope-6x19-iwrc-1770-40-mm",
            string.Join(' ', RopeTable.Thicker(Find("rope-6x19-iwrc-1770-32-mm")).Select(r => r.Name)));
        Assert.Empty(RopeTable.Thicker(Find("cord-7x19-3/8") with { Name = "own" }));
        Assert.Equal(1.125 * 0.0254, Find("rope-6x19-iwrc-eips-1-1/8").Diameter, 1e-12);
    }

    [Fact]
    public void Keys_are_distinct_and_found()
    {
        Assert.Equal(RopeTable.Keys.Length, RopeTable.Keys.Distinct(StringComparer.Ordinal).Count());
        Assert.All(RopeTable.Keys, k => Assert.True(RopeTable.TryFind(k, out _)));
    }

    private static RopeProperties[] Of(string make) =>
        [.. RopeTable.Keys.Where(k => string.Equals(Make(k), make, StringComparison.Ordinal)).Select(Find)];

    private static RopeProperties Find(string key) =>
        RopeTable.TryFind(key, out var rope) ? rope : throw new KeyNotFoundException(key);

    // A size is a fraction, a whole inch, both with a dash between, or millimetres with their unit.
    private static string Make(string key)
    {
        if (key.EndsWith("-mm", StringComparison.Ordinal))
        {
            return key[..key.LastIndexOf('-', key.Length - 4)];
        }

        var make = key[..key.LastIndexOf('-')];
        return make.EndsWith("-1", StringComparison.Ordinal) ? make[..^2] : make;
    }
}
