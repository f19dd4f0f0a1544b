using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Loads;

/// <summary>
/// What lies where in each load case, before any is solved. Area load acts on the clear width; its eccentric share is on the
/// heavier rope where it lies on the whole width, and half the width carries its full intensity with the resultant a quarter
/// of the width from the middle.
/// </summary>
internal sealed class LoadPatterns(LoadCaseInput input)
{
    // Resultant of a load on half the width, as a share of the width from the middle line; and half the width's load.
    private const double HalfWidthArm = 0.25;
    private const double HalfWidth = 0.5;
    private const int Quarters = 4;

    private readonly double _span = input.Design.Nodes[^1].X;
    private readonly double _edge = NodeLoads.EdgeFromMiddle(input.ClearWidth, input.Loads.PointEdge);
    private readonly ImmutableArray<double> _none = ImmutableArray.Create(new double[input.Design.Nodes.Length]);

    /// <summary>
    /// How heavy the wood is: in service for what people compare, wet for strength and room, dry for what a light bridge does
    /// not hold down.
    /// </summary>
    internal enum Wood
    {
        InService,
        Wet,
        Dry,
    }

    /// <summary>The cases that are the same for every bridge.</summary>
    public IEnumerable<Loading> Listed()
    {
        var (live, reference) = (input.Loads.Live, input.ReferenceTemperature);
        yield return Empty(LoadCaseIds.Dead, "Bridge empty", reference, Wood.InService);
        yield return Live(LoadCaseIds.LiveFull, "Live load on the whole deck", 0, _span);
        yield return Live(LoadCaseIds.LiveHalfA, "Live load on the half next to support A", 0, _span / 2);
        yield return Live(LoadCaseIds.LiveHalfB, "Live load on the half next to support B", _span / 2, _span);
        yield return OnStretches(
            LoadCaseIds.LiveSide, "Live load on one side of the deck", [new(0, _span, DeckPart.Left)], Wood.InService, reference);
        yield return Point(LoadCaseIds.PointMid, "Point load at mid-span, on the middle line", _span / 2, 0);
        yield return Point(LoadCaseIds.PointQuarter, "Point load at a quarter of the span, on the middle line", _span / 4, 0);
        yield return Point(LoadCaseIds.PointEdgeMid, "Point load at mid-span, at the edge of the deck", _span / 2, _edge);
        yield return HalfErected();
        if (input.Loads.Snow is not null)
        {
            yield return Snow(LoadCaseIds.Snow, "Snow on the whole deck", false, Wood.InService, reference);
            yield return Snow(LoadCaseIds.LiveSnow, Together, true, Wood.InService, reference);
        }

        yield return Empty(LoadCaseIds.Cold, "Bridge empty at the lowest temperature", input.Coldest, Wood.InService);
        yield return Empty(LoadCaseIds.Hot, "Bridge empty at the highest temperature", input.Hottest, Wood.InService);
        foreach (var worst in AtItsWorst(live))
        {
            yield return worst;
        }
    }

    /// <summary>Live load on parts of the deck, besides the halves.</summary>
    public IEnumerable<Loading> OnParts()
    {
        string[] ids = [LoadCaseIds.LiveQuarter1, LoadCaseIds.LiveQuarter2, LoadCaseIds.LiveQuarter3, LoadCaseIds.LiveQuarter4];
        string[] words = ["next to support A", "second from support A", "third from support A", "next to support B"];
        for (var i = 0; i < Quarters; i++)
        {
            yield return Live(ids[i], $"Live load on the quarter {words[i]}", _span * i / Quarters, _span * (i + 1) / Quarters);
        }

        yield return OnStretches(
            LoadCaseIds.LiveCross, "Live load on the right of the half next to support A, on the left of the other",
            [new(0, _span / 2, DeckPart.Right), new(_span / 2, _span, DeckPart.Left)], Wood.InService, input.ReferenceTemperature);
    }

    /// <summary>The user's own.</summary>
    public IEnumerable<Loading> Own() => input.Loads.Cases.Select(Own);

    /// <summary>The point load at one frame, on the middle line.</summary>
    public Loading PointAt(int frame)
    {
        var name = Name(frame);
        return PointAt(LoadCaseIds.PointAt(name), $"Point load at frame {name}, on the middle line", frame, 0);
    }

    /// <summary>The point load at one frame, at the deck's edge.</summary>
    public Loading PointEdgeAt(int frame)
    {
        var name = Name(frame);
        return PointAt(LoadCaseIds.PointEdgeAt(name), $"Point load at frame {name}, at the edge of the deck", frame, _edge);
    }

    /// <summary>Live load on stretches of the deck.</summary>
    public Loading OnStretches(
        string id, string title, ImmutableArray<LoadedStretch> stretches, Wood wood, double temperature)
    {
        var loading = Empty(id, title, temperature, wood);
        foreach (var part in stretches.GroupBy(s => s.Part))
        {
            var lengths = new double[_none.Length];
            foreach (var stretch in part)
            {
                var own = NodeLoads.TributaryLengths(input.Design.Nodes, stretch.From, stretch.To);
                for (var i = 0; i < lengths.Length; i++)
                {
                    lengths[i] += own[i];
                }
            }

            var (share, aside) = part.Key == DeckPart.Whole
                ? (1, Eccentric)
                : (HalfWidth, part.Key == DeckPart.Left ? SideArm : -SideArm);
            var force = input.Loads.Live * input.ClearWidth * share;
            loading = loading.Plus(new PlacedLoad(
                ImmutableArray.Create(Array.ConvertAll(lengths, l => l * force)), aside, Over(StandingWeights.PeopleOverDeck)));
        }

        return loading with { Stretches = stretches };
    }

    /// <summary>The same load on a bridge of other wood: dry where it was wet, else wet; null where heights are left out.</summary>
    public Loading? OtherWood(Loading of) => (input.Standing, IsDry(of)) switch
    {
        ({ } standing, true) => of with { Hung = standing.Heavy, HungMoments = standing.HeavyMoments },
        ({ } standing, false) => of with { Hung = standing.Light, HungMoments = standing.LightMoments },
        _ => null,
    };

    /// <summary>The wood of a load is dry.</summary>
    public bool IsDry(Loading of) => input.Standing is { } standing && of.Hung == standing.Light;

    /// <summary>Resultant of a load on the whole width, towards the heavier rope, metres.</summary>
    public double Eccentric => (input.Loads.Eccentricity - 0.5) * input.RopeSpacing;

    /// <summary>Resultant of a load on half the width, from the middle, metres.</summary>
    public double SideArm => input.ClearWidth * HalfWidthArm;

    /// <summary>Resultant of a point load at the edge, from the middle, metres.</summary>
    public double Edge => _edge;

    /// <summary>Height of people's weight over the ropes at each node, metres.</summary>
    public ImmutableArray<double> PeopleHeights => Over(StandingWeights.PeopleOverDeck);

    private const string Together = "Three quarters each of live load and snow on the whole deck";

    /// <summary>Name of a frame.</summary>
    public string Name(int frame) => FramePoses.FrameName(frame, input.Design.Nodes.Length - 1);

    // Cold ropes hang flatter and pull harder, hot ones hang deeper; wet wood makes both worse.
    private IEnumerable<Loading> AtItsWorst(double live)
    {
        const string Whole = "Live load on the whole deck at the ";
        yield return Empty(LoadCaseIds.LiveFullCold, Whole + "lowest temperature, wood wet", input.Coldest, Wood.Wet)
            .Plus(People(live, 0, _span));
        if (input.Loads.Snow is not null)
        {
            yield return Snow(
                LoadCaseIds.SnowCold, "Snow on the whole deck at the lowest temperature, wood wet", false, Wood.Wet, input.Coldest);
            yield return Snow(LoadCaseIds.LiveSnowCold, Together + " at the lowest temperature, wood wet", true, Wood.Wet, input.Coldest);
        }

        yield return Empty(LoadCaseIds.LiveFullHot, Whole + "highest temperature, wood wet", input.Hottest, Wood.Wet)
            .Plus(People(live, 0, _span));
    }

    private Loading Empty(string id, string title, double temperature, Wood wood) => (wood, input.Standing) switch
    {
        (Wood.Wet, { } standing) => new(id, title, temperature, standing.Heavy, standing.HeavyMoments),
        (Wood.Dry, { } standing) => new(id, title, temperature, standing.Light, standing.LightMoments),
        _ => new(id, title, temperature, [.. input.Design.Loads.Select(p => 2 * p)], input.Standing?.Moments ?? _none),
    };

    private Loading Live(string id, string title, double from, double to) =>
        Empty(id, title, input.ReferenceTemperature, Wood.InService).Plus(People(input.Loads.Live, from, to));

    private Loading Snow(string id, string title, bool together, Wood wood, double temperature)
    {
        var (snow, live) = (input.Loads.Snow!.Value, input.Loads.Live);
        var empty = Empty(id, title, temperature, wood);
        return together
            ? empty.Plus(People(LoadCases.TogetherShare * live, 0, _span)).Plus(Area(LoadCases.TogetherShare * snow, 0, _span, 0))
            : empty.Plus(Area(snow, 0, _span, 0));
    }

    private PlacedLoad People(double pressure, double from, double to) => Area(pressure, from, to, StandingWeights.PeopleOverDeck);

    private PlacedLoad Area(double pressure, double from, double to, double overDeck) => new(
        [.. NodeLoads.TributaryLengths(input.Design.Nodes, from, to).Select(l => l * pressure * input.ClearWidth)],
        Eccentric,
        Over(overDeck));

    private ImmutableArray<double> Over(double overDeck) =>
        input.Standing is { } standing ? [.. standing.DeckHeights.Select(h => h + overDeck)] : _none;

    private Loading Point(string id, string title, double x, double fromMiddle) =>
        PointAt(id, title, NodeLoads.Nearest(input.Design.Nodes, x), fromMiddle);

    private Loading PointAt(string id, string title, int? frame, double fromMiddle) =>
        Empty(id, title, input.ReferenceTemperature, Wood.InService).Plus(new PlacedLoad(
            frame is { } node ? _none.SetItem(node, input.Loads.PointForce) : _none, fromMiddle, Over(StandingWeights.PeopleOverDeck)));

    private Loading HalfErected()
    {
        // The frame at mid-span is hung; round-off decides nothing at this distance.
        var last = (_span / 2) + (Tolerances.Spacing * _span);
        ImmutableArray<double> Hung(ImmutableArray<double> all, double times) =>
            [.. all.Select((p, i) => input.Design.Nodes[i].X <= last ? p * times : 0)];
        return new Loading(
            LoadCaseIds.ErectHalf, "Frames hung from support A to mid-span, no deck", input.ReferenceTemperature,
            Hung(input.FrameLoads, 2), Hung(input.Standing?.FrameMoments ?? _none, 1));
    }

    private Loading Own(LoadCaseParameters own)
    {
        var point = NodeLoads.LeverShares(input.Design.Nodes, own.PointAt ?? (_span / 2)).Select(p => p * own.PointForce);
        return Empty(own.Id, own.Id, own.Temperature ?? input.ReferenceTemperature, Wood.InService)
            .Plus(People(own.Live, own.From ?? 0, own.To ?? _span))
            .Plus(new PlacedLoad([.. point], _edge, Over(StandingWeights.PeopleOverDeck)));
    }
}
