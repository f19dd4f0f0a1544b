using BridgeForm.Ropes.Modes;
using BridgeForm.Ropes.Pairs;
using BridgeForm.Tests.Ropes.Pairs;

namespace BridgeForm.Tests.Ropes.Modes;

/// <summary>One walker on a mode (EUR 23984 EN; its figures from memory), and the modal masses he meets.</summary>
public sealed class FootfallTests
{
    // 280 N × 1 / (2 × 0.007 × 2000 kg) = 10 m/s²; 35 N × 1 / (2 × 0.007 × 2500 kg) = 1 m/s².
    [Fact]
    public void Peak_is_force_over_twice_damping_times_mass()
    {
        RopeSamples.Close(10, Footfall.Acceleration(280, Footfall.VerticalShare(1.9), 2000)!.Value, 1e-12);
        RopeSamples.Close(1, Footfall.Acceleration(35, Footfall.LateralShare(0.85), 2500)!.Value, 1e-12);
    }

    // Twenty people of 75 kg.
    [Fact]
    public void A_mode_lighter_than_twenty_people_has_no_figure()
    {
        Assert.Null(Footfall.Acceleration(280, 1, 1499.9));
        Assert.NotNull(Footfall.Acceleration(280, 1, 1500));
    }

    // First harmonic of steps from 1.25 to 2.3 Hz, whole from 1.7 to 2.1; the second at twice these with a quarter; to the side
    // at half the step.
    [Theory]
    [InlineData(1.25, 0)]
    [InlineData(1.475, 0.5)]
    [InlineData(1.7, 1)]
    [InlineData(2.1, 1)]
    [InlineData(2.2, 0.5)]
    [InlineData(2.4, 0)]
    [InlineData(2.95, 0.125)]
    [InlineData(3.8, 0.25)]
    [InlineData(4.4, 0.125)]
    [InlineData(4.7, 0)]
    [InlineData(0.8, 0)]
    public void Shares_up_and_down(double hertz, double share) => Assert.InRange(Footfall.VerticalShare(hertz) - share, -1e-9, 1e-9);

    [Theory]
    [InlineData(0.45, 0)]
    [InlineData(0.6, 0.5)]
    [InlineData(0.9, 1)]
    [InlineData(1.1, 0.5)]
    [InlineData(1.3, 0)]
    public void Shares_to_the_side(double hertz, double share) => Assert.InRange(Footfall.LateralShare(hertz) - share, -1e-9, 1e-9);

    // Halves against each other go as a sine: half of all mass moves, that of both ropes. What moves along the bridge besides is
    // 4·(4·f/L)² or so of it, less than 2 % at a sag of L/40.
    [Fact]
    public void Half_of_all_mass_swings_in_a_sine()
    {
        var (rope, loads) = PairSamples.Even(40, 40, 1, 1.7e7);
        var pair = PairSamples.Find(rope, loads);
        var modes = RopeModes.Find("dead", pair.Left)!;
        var mode = modes.Walked.Single(m => Math.Abs(m.Hertz - modes.VerticalAntisymmetric!.Value) < 1e-9);
        Assert.False(mode.IsCoupled);
        RopeSamples.Close(PairSamples.PerMetre * 40 / 9.80665 / 2, mode.VerticalMass, 0.06);
        Assert.Equal(double.PositiveInfinity, mode.LateralMass);
    }

    // A single frame whose mass lies at the ropes sways with all of it and rolls with its inertia: J·(2/W)² at the deck's edge.
    // A deck a metre over the ropes moves to the side by what the frame rolls.
    [Fact]
    public void One_frame_sways_with_its_mass_and_rolls_with_its_inertia()
    {
        var (rope, loads) = PairSamples.Even(2, 2, 0.1, 1.7e7);
        loads = PairSamples.HeightsTimes(loads, 0);
        var pair = PairSamples.Find(rope, loads);
        const double G = 9.80665;
        var (mass, inertia) = (loads.Weights[1] / G, 120.0);
        var masses = new PairMasses([0, mass, 0], [0, 0, 0], [0, inertia, 0]);
        var walked = SwayModes.Find(rope, PairSamples.Spacing, loads, pair, masses, new WalkedDeck([0, 1, 0], 0.45))!.Walked;
        Assert.All(walked, m => Assert.True(m.IsCoupled));
        RopeSamples.Close(mass, walked.Where(m => m.VerticalMass > 1e6).Min(m => m.LateralMass), 1e-6);
        var roll = walked.Where(m => m.VerticalMass < 1e6).MinBy(m => m.VerticalMass)!;
        RopeSamples.Close(inertia / 0.45 / 0.45, roll.VerticalMass, 1e-6);
        RopeSamples.Close(inertia, roll.LateralMass, 1e-6);
    }
}
