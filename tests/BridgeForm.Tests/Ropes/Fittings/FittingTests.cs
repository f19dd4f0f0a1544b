using BridgeForm.Output.DrawingSet;
using BridgeForm.Ropes.Fittings;

namespace BridgeForm.Tests.Ropes.Fittings;

public sealed class FittingTests
{
    private const double Inch = 0.0254;
    private const double PoundForce = 4.4482216152605;

    /// <summary>
    /// Calif. 8 CCR §8497 table 1 and a maker's table: clips, turn-back in inches, torque in foot-pounds. The maker has two clips
    /// below 1/2 in; WAC 296-24-29401 (5)(c) asks for three, and the third takes its 6 diameters: 4.75 + 1.5, 6.5 + 2.25 in. From 1 in
    /// on the table's turn-back is too short for clips 6 diameters apart: 5 of them on 1 in take 4 · 6 + 3 = 27, not 26; 7 on 1-1/2 in
    /// (6 · 6 + 3) · 1.5 = 58.5, not 48.
    /// </summary>
    [Theory]
    [InlineData(0.125, 3, 4.5, 4.5)]
    [InlineData(0.25, 3, 6.25, 15)]
    [InlineData(0.375, 3, 8.75, 45)]
    [InlineData(0.5, 3, 11.5, 65)]
    [InlineData(0.75, 4, 18, 130)]
    [InlineData(0.875, 4, 19, 225)]
    [InlineData(1, 5, 27, 225)]
    [InlineData(1.5, 7, 58.5, 360)]
    public void Clips_are_those_of_the_table(double inches, int count, double turnBack, double torque)
    {
        var clip = WireRopeClip.For(inches * Inch)!;
        Assert.Equal(count, clip.Count);
        Assert.Equal(turnBack, clip.TurnBack / Inch, 9);
        Assert.Equal(torque, clip.Torque / (12 * Inch * PoundForce), 9);
        Assert.Equal(6 * inches, clip.Spacing / Inch, 9);
    }

    /// <summary>Drawn, the clips lie between the thimble's throat and the cut end, each on both parts of the rope.</summary>
    [Fact]
    public void All_clips_find_room_on_the_turned_back_rope() => Assert.All(WireRopeClip.All, clip =>
    {
        var places = ClipDetail.Places(clip);
        Assert.Equal(clip.Count, places.Length);
        Assert.InRange(places.Min(), clip.Diameter - 1e-9, clip.TurnBack);
        Assert.InRange(places.Max(), 0, clip.TurnBack - (2 * clip.Diameter) + 1e-9);
        Assert.All(places.Zip(places.Skip(1)), p => Assert.Equal(6 * clip.Diameter, Math.Abs(p.Second - p.First), 1e-9));
    });

    /// <summary>Makers' tables: turnbuckles take up 6, 12, 18 or 24 in.</summary>
    [Theory]
    [InlineData(5, 6.0)]
    [InlineData(6.1, 12.0)]
    [InlineData(13, 18.0)]
    [InlineData(18.5, 24.0)]
    [InlineData(24.1, null)]
    public void The_shortest_turnbuckle_that_takes_up_enough(double needed, double? inches) =>
        Assert.Equal(inches, FittingSet.ShortestTakeUp(needed * Inch) is { } found ? Math.Round(found / Inch, 9) : null);

    /// <summary>
    /// NAVEDTRA 14026: at least 3D + 1 clips, D in inches; the table never asks for fewer than the rule less its rounding.
    /// </summary>
    [Fact]
    public void Clips_grow_with_the_rope()
    {
        foreach (var (thin, thick) in WireRopeClip.All.Zip(WireRopeClip.All.Skip(1)))
        {
            Assert.True(thin.Diameter < thick.Diameter);
            Assert.True(thin.Count <= thick.Count && thin.TurnBack <= thick.TurnBack && thin.Torque <= thick.Torque, thick.Size);
        }

        Assert.All(WireRopeClip.All, c => Assert.True(c.Count >= (3 * c.Diameter / Inch) + 1 - 0.5, c.Size));
    }

    [Fact]
    public void Sizes_between_rows_are_not_guessed()
    {
        Assert.Null(WireRopeClip.For(0.6 * Inch));
        Assert.NotNull(WireRopeClip.For(19.05e-3));
    }

    /// <summary>FF-T-791b: 3/4 in 4000 lbf, 1-1/4 in 12 000 lbf; anchor shackle 3/4 in 4-3/4 short tons.</summary>
    [Theory]
    [InlineData(3999, "3/4", "1/2")]
    [InlineData(4000, "3/4", "1/2")]
    [InlineData(4001, "7/8", "5/8")]
    [InlineData(9500, "1-1/4", "3/4")]
    [InlineData(12001, null, "7/8")]
    public void Smallest_that_carries_the_pull(double pounds, string? turnbuckle, string? shackle)
    {
        Assert.Equal(turnbuckle, FittingSet.Turnbuckles.Smallest(pounds * PoundForce)?.Size);
        Assert.Equal(shackle, FittingSet.Shackles.Smallest(pounds * PoundForce)?.Size);
    }

    /// <summary>
    /// FF-T-791b, type I form 1, jaw or eye, pounds; carbon anchor shackles as makers print them, short tons (from memory): each
    /// size carries its own load and no more.
    /// </summary>
    [Fact]
    public void Working_loads_are_those_of_the_tables()
    {
        Carry(
            FittingSet.Turnbuckles,
            [
                ("1/4", 500), ("5/16", 700), ("3/8", 1040), ("1/2", 1800), ("5/8", 2700), ("3/4", 4000), ("7/8", 5800), ("1", 7600),
                ("1-1/4", 12000),
            ]);
        Carry(
            FittingSet.Shackles,
            [
                ("3/16", 660), ("1/4", 1000), ("5/16", 1500), ("3/8", 2000), ("7/16", 3000), ("1/2", 4000), ("5/8", 6500), ("3/4", 9500),
                ("7/8", 13000), ("1", 17000),
            ]);

        static void Carry(FittingSet set, (string Size, double Pounds)[] table)
        {
            Assert.Equal(table.Select(t => t.Size), set.Sizes.Select(s => s.Size));
            Assert.All(table.Zip(set.Sizes), p => Assert.Equal(p.First.Pounds * PoundForce, p.Second.WorkingLoad, 1e-6));
        }
    }

    [Fact]
    public void Working_loads_grow_with_size() => Assert.All(
        new[] { FittingSet.Turnbuckles, FittingSet.Shackles },
        set => Assert.All(set.Sizes.Zip(set.Sizes.Skip(1)), p => Assert.True(p.First.WorkingLoad < p.Second.WorkingLoad)));
}
