using BridgeForm.Checks;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Tests.Checks.Catalogue.Ropes;

namespace BridgeForm.Tests.Checks.Catalogue.Geometry;

/// <summary>Contacts against the seating tolerance of 1.5 mm (docs/bridge.md).</summary>
internal static class ContactProofs
{
    private const double Seating = 0.0015;

    // The sweep lets a micrometre of rounding pass; a case beside the limit lies further from it than that.
    private static double Further(double share) => 1 + (1.8 * (share - 1));

    // Two rails of 3-1/2 in nearer than that, which the reader would refuse: they press into each other across their width.
    [Proves("parts-overlap", CheckStatus.Pass, Side.Within)]
    [Proves("parts-overlap", CheckStatus.Fail, Side.Beyond)]
    public static Proof Rails_too_near(double share)
    {
        var bridge = new TwoBays();
        var ((sin, cos), fall) = (Math.SinCos(bridge.LeanRadians), Math.Sin(Math.Atan(bridge.CapFall)));
        var (along, through) = (fall * cos, fall * fall * sin * cos / bridge.RailNormal);
        var across = Math.Sqrt(1 - (along * along) - (through * through));
        var second = (6 * TwoBays.Inch) + (((3.5 * TwoBays.Inch) - (Seating * Further(share))) / across);
        var read = Bridges.Read(bridge.Text);
        var context = Contexts.Of(read with { Guard = read.Guard with { RailHeights = [6 * TwoBays.Inch, second] } });
        return new Proof(Contexts.Check(context, "parts-overlap"), Seating * Further(share), Seating) { Error = 1e-6 };
    }

    // Ropes thinner than the one the channels were cut for: their tops lie by so much below the floor of the middle base, which
    // hangs on them.
    [Proves("parts-bear", CheckStatus.Pass, Side.Within)]
    [Proves("parts-bear", CheckStatus.Fail, Side.Beyond)]
    public static Proof Base_over_thinner_ropes(double share)
    {
        var parameters = Bridges.Read(new TwoBays().Text);
        var context = Contexts.Of(parameters);
        Assert.True(PieceSet.TryOf(parameters, Members.Lay(context.Layout), out var pieces, out var failure), failure);
        var thinner = RopeRuns.Draw(parameters, context.Rope).Select(r => r with { Radius = r.Radius - (Seating * Further(share)) });
        var off = context with { Contacts = ContactSweep.Sweep(context.Layout, pieces, [.. thinner]) };
        return new Proof(Contexts.Check(off, "parts-bear"), Seating * Further(share), Seating) { Error = 1e-6 };
    }

    // The middle frame is square to a rope that bends there, so the rope's top enters the level floor at its mouth, half of
    // 3-1/2 in from the middle, by 1.75·sin φ + r·(1 − cos φ), measured square to the rope. The slope is that of the rope's
    // first quarter of a bay, which is looked at as straight: its chord's, less three quarters of half its own weight over H.
    [Proves("rope-in-channels", CheckStatus.Pass, Side.Within)]
    [Proves("rope-in-channels", CheckStatus.Fail, Side.Beyond)]
    public static Proof Rope_bends_into_the_mouths(double share)
    {
        var sag = 2.5;
        for (var i = 0; i < 4; i++)
        {
            sag += ((Seating * Further(share) / TwoBays.Inch) - Depth(sag)) * 72 / 1.75;
        }

        return new Proof(Bridge(sag).Check("rope-in-channels"), Seating * Further(share), Seating) { Error = 2e-4 };
    }

    private static TwoBays Bridge(double sag) => new() { Sag = sag, Drop = sag };

    private static double Depth(double sag)
    {
        var (rope, load) = (new TwoLinks(), TwoLinks.DeadLoad(Bridge(sag)));
        var length = rope.Length(load, sag);
        var level = rope.Level(load, sag, length);
        var slope = Math.Atan((sag / 72) - (0.75 * rope.PerInch * length / (2 * level)));
        return (1.75 * Math.Sin(slope)) + (0.375 * (1 - Math.Cos(slope)));
    }
}
