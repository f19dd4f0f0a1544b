using System.Globalization;
using BridgeForm.Checks;
using BridgeForm.Loads;

namespace BridgeForm.Tests.Checks.Catalogue.Ropes;

/// <summary>
/// A wind across a bridge of two bays: its outline from the side by hand, and one frame on four links in space. Inches and
/// pounds.
/// </summary>
internal static class WindProofs
{
    private const double Board = 1.5;
    private const double Rail = 3.5;
    private const double RailThick = 0.75;

    // Base's top over the middle frame's rope: floor 0.375 − channel 0.625 + 5.5.
    private const double Top = 5.25;

    [Proves("wind-side", CheckStatus.Engineer)]
    public static Proof Side()
    {
        var bridge = In(1.5);
        var (outline, rope) = (Outline(bridge), new TwoLinks());
        var ropes = 2 * 0.75 * 2 * rope.Length(TwoLinks.DeadLoad(bridge), bridge.Sag);
        var force = 1.5 / 144 * (outline.Area + ropes);

        // Alike from both ends: half of it at either.
        return Proof("wind-side", bridge, TwoLinks.Newtons(force / 2)).Saying("Side stays", "licensed engineer decides");
    }

    // Moments about the leeward end of the base: wind × its height over the landing less 0.6 of the light weight × half the base.
    [Proves("wind-end-frame", CheckStatus.Engineer)]
    public static Proof End()
    {
        var bridge = In(20);
        var surfaces = StandingWeights.Weigh(bridge.Context.Layout).Surfaces;
        var (area, moment) = EndOutline(bridge);
        var (length, weight) = (2 * (bridge.Foot + 10.75), surfaces.Ends[0].Light / 4.4482216152605);
        var down = ((20.0 / 144 * moment) - (0.6 * weight * length / 2)) / length;
        Assert.InRange(area * TwoBays.Inch * TwoBays.Inch / surfaces.Ends[0].OverLanding.Area, 0.995, 1.005);

        // The moment of the outline is right to the half of a per cent that the hand leaves out; weight takes half of it off again.
        return (Proof("wind-end-frame", bridge, TwoLinks.Newtons(down)) with { Error = 1.5e-2 }).Saying(
            "to hold down at the end of its base");
    }

    // One frame on four links: moves and roll until ropes, weight and wind balance, the heights' levers included.
    [Proves("wind-swing", CheckStatus.Engineer)]
    public static Proof Swing()
    {
        var bridge = In(1.5);
        var frame = new BlownFrame(bridge, 1.5, 0.6, Outline(bridge));

        // A rope moves to the side with the middle, and with the frame's roll hardly more.
        var sideways = frame.Across + (frame.Spacing / 2 * (1 - Math.Cos(frame.Roll)));
        return Proof("wind-swing", bridge, sideways * TwoBays.Inch).Saying(
            "finished, 0.6 D + W", (frame.Roll * 180 / Math.PI).ToString("0.0", CultureInfo.InvariantCulture) + "°", "bare ropes");
    }

    // So strong a wind throws it over. While the frame still stands upright, moments about the leeward rope: wind × height less
    // 0.6 of the light weight × half the spacing, over the spacing.
    [Proves("wind-keeper", CheckStatus.Engineer)]
    public static Proof Keeper()
    {
        var bridge = In(40);
        var outline = Outline(bridge);
        var weight = 0.6 * StandingWeights.Weigh(bridge.Context.Layout).Light[1] / 4.4482216152605;
        var lift = ((40.0 / 144 * outline.Moment) - (weight * bridge.Spacing / 2)) / bridge.Spacing;
        var given = bridge.Context.Wind;
        Assert.False(given.Done(WindWork.Sure)!.Stands);
        Assert.InRange(given.Upright!.Lift / TwoLinks.Newtons(lift), 0.99, 1.01);
        var at = weight * bridge.Spacing / 2 / outline.Moment * 144;
        Assert.InRange(given.LiftsAt!.Value / (TwoLinks.Newtons(at) / 144 / TwoBays.Inch / TwoBays.Inch), 0.99, 1.01);
        var solved = given.States.Where(s => s.Combination is WindWork.Sure).Max(s => s.Lift);
        return Proof("wind-keeper", bridge, Math.Max(TwoLinks.Newtons(lift), solved))
            .Saying("moments about the leeward rope", "Side stays");
    }

    // 50 plf on the cap of both half bays, 72.4 in of it along its fall, at its top over the middle frame; by hand as a wind of 600 psf
    // on so many square inches: 50 lb on a foot is 600 / 144 lb on an inch. It throws a bridge over that one person does not, and bends
    // one with 500 lb of hardware on each frame aside.
    [Proves("guard-line-load", CheckStatus.Engineer)]
    public static Proof A_row_of_people_on_one_guard() => Leaning(
        "hardware: 200 lb", "50 plf along all of one guard", "without side stays it turns over between");

    [Proves("guard-line-load", CheckStatus.Engineer)]
    public static Proof A_row_of_people_on_one_guard_of_a_heavy_bridge()
    {
        var bridge = Public(Heavy);
        var frame = new BlownFrame(bridge, 600, 1, Cap(bridge), onRopes: false);
        Assert.InRange(frame.Roll, 0.008, 0.3);
        var sideways = frame.Across + (frame.Spacing / 2 * (1 - Math.Cos(frame.Roll)));
        return Leaning(
            Heavy, "it stands", $"roll {(frame.Roll * 180 / Math.PI).ToString("0.0", CultureInfo.InvariantCulture)}° at F01",
            $"{(int)sideways}");
    }

    // 200 lbf at the cap's top of a private bridge's middle frame: as a wind of 28,800 psf on one square inch.
    [Proves("guard-line-load", CheckStatus.Engineer)]
    public static Proof One_who_pushes_on_a_private_bridge()
    {
        var bridge = new TwoBays { Frames = "hardware: 200 lb" };
        var height = Top + (bridge.PostLength * Math.Cos(bridge.LeanRadians)) + Board;
        var frame = new BlownFrame(bridge, 28800, 1, (1, height), onRopes: false);
        Assert.InRange(frame.Roll, 0.004, 0.3);
        return Proof("guard-line-load", bridge, TwoLinks.Newtons(200)).Saying(
            "200 lbf outward on one post of F01",
            $"roll {(frame.Roll * 180 / Math.PI).ToString("0.0", CultureInfo.InvariantCulture)}° at F01",
            "there, with the weight of the one who pushes");
    }

    // The same push on a bridge as light as wood: by hand the frame is looked for between pushes under which it stands and under which
    // it pushes back no more; the check follows it by steps and stops at the last below.
    [Proves("guard-line-load", CheckStatus.Fail)]
    public static Proof One_who_stumbles_turns_a_light_bridge_over()
    {
        var bridge = new TwoBays();
        var height = Top + (bridge.PostLength * Math.Cos(bridge.LeanRadians)) + Board;
        var (stands, falls) = (75.0, 150.0);
        for (var i = 0; i < 6; i++)
        {
            var middle = (stands + falls) / 2;
            (stands, falls) = new BlownFrame(bridge, 144 * middle, 1, (1, height), onRopes: false).Stands
                ? (middle, falls)
                : (stands, middle);
        }

        var check = bridge.Check("guard-line-load");
        var told = check.Capacity!.Value / TwoLinks.Newtons(1);
        Assert.InRange(stands, 80, 145);
        Assert.InRange(told, stands - 25, falls);
        return new Proof(check, TwoLinks.Newtons(200), TwoLinks.Newtons(told)).Saying(
            "200 lbf outward on one post of F01: without side stays it turns over or rolls beyond 30.0° between");
    }

    private const string Heavy = "hardware: 500 lb";

    private static TwoBays Public(string more) => new()
    {
        Use = "public",
        Frames = more,
    };

    private static (double Area, double Moment) Cap(TwoBays bridge)
    {
        var length = bridge.Half * Math.Sqrt(1 + (bridge.CapFall * bridge.CapFall));
        return (length, length * (Top + (bridge.PostLength * Math.Cos(bridge.LeanRadians)) + Board));
    }

    private static Proof Leaning(string more, params string[] says)
    {
        var bridge = Public(more);
        return Proof("guard-line-load", bridge, TwoLinks.Newtons(600.0 / 144 * Cap(bridge).Area)).Saying(says);
    }

    /// <summary>Outline of the middle frame with half of both bays, and its moment over the rope, square inches and their inches.</summary>
    public static (double Area, double Moment) Outline(TwoBays bridge)
    {
        var (lean, cos) = (bridge.LeanRadians, Math.Cos(bridge.LeanRadians));
        var rail = (Rail * cos) + (RailThick * Math.Sin(lean));

        // Halfway along a bay everything lies as high over the ropes' chord as on the average of its two frames.
        var mean = (bridge.EndTop + Top) / 2;
        var run = (bridge.Half + 0.75) * Math.Sqrt(1 + (bridge.CapFall * bridge.CapFall));
        var sum = (Area: 0.0, Moment: 0.0);
        void Add(double area, double height) => sum = (sum.Area + area, sum.Moment + (area * height));
        foreach (var high in new[] { 6, 12, 18 })
        {
            Add(2 * run * rail, mean + (high * cos) + (RailThick / 2 * Math.Sin(lean)));
            Add(-2 * Board * rail, Top + (high * cos));
        }

        Add(2 * run * Board, mean + (bridge.PostLength * cos) + (Board / 2));
        Add(2 * Board * bridge.PostLength * cos, Top + (bridge.PostLength * cos / 2));
        Add(-2 * Board * Board, Top + (Board / 2));
        Add(bridge.Half * Board, mean + (Board / 2));
        Add(3.5 * 5.5, Top - 2.75);
        return sum;
    }

    // An end frame with half of its bay, over the underside of its base, 5.5 in below its top.
    private static (double Area, double Moment) EndOutline(TwoBays bridge)
    {
        var (whole, cos) = (Outline(bridge), Math.Cos(bridge.LeanRadians));
        var rail = (Rail * cos) + (RailThick * Math.Sin(bridge.LeanRadians));

        // Of the two half bays one is left; the frame's own outline is the middle frame's, moved up to its base.
        var own = (2 * Board * ((bridge.PostLength * cos) - (3 * rail) - Board)) + (3.5 * 5.5);
        var ownMoment = (2 * Board * bridge.PostLength * cos * (5.5 + (bridge.PostLength * cos / 2)))
            - (2 * Board * Board * (5.5 + (Board / 2)))
            + (3.5 * 5.5 * 2.75) - new[] { 6, 12, 18 }.Sum(h => 2 * Board * rail * (5.5 + (h * cos)));
        var bay = (whole.Area - own) / 2;
        var bayMoment = (whole.Moment - (ownMoment + (own * (Top - 5.5)))) / 2;
        return (own + bay, ownMoment + bayMoment - (bay * (bridge.EndTop - 5.5)));
    }

    private static TwoBays In(double psf) => new()
    {
        More = string.Create(CultureInfo.InvariantCulture, $"loads: {{ wind: {{ pressure: {psf} psf, source: invented site }} }}"),
    };

    // What the hand leaves out of the outline: bevels of rails and caps, the lift of boards at the end frames.
    private static Proof Proof(string id, TwoBays bridge, double demand) => new(bridge.Check(id), demand) { Error = 5e-3 };
}
