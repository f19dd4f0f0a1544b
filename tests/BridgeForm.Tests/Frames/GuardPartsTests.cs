using BridgeForm.Checks.Codes;
using BridgeForm.Contacts;
using BridgeForm.Frames;
using BridgeForm.Loads;
using BridgeForm.Roles;
using BridgeForm.Solids;
using BridgeForm.Tests.Checks;
using BridgeForm.Tests.Solids;

namespace BridgeForm.Tests.Frames;

/// <summary>Handrail, pickets and cleats: where they lie, by hand, and that nothing is open or in the way on random bridges.</summary>
public sealed class GuardPartsTests
{
    private const double Inch = 0.0254;
    private const string Long = "BRIDGEFORM_PARTS";
    private const int Few = 10;

    private const string Picketed = Bridges.Garden
        + "\nguard: { rails: { section: 2x4 }, pickets: { section: 2x2, gap: 3-1/2 in }, handrail: { height: 34 in } }\n";

    // A level bay of 900 mm, plumb: 900 / (90 + 40) is 6.9, so 7 pickets stand 900 / 7 = 128.571 mm apart.
    [Fact]
    public void Pickets_of_a_level_bay_stand_as_far_apart_as_by_hand()
    {
        var layout = Bridges.Layout(Bridges.Read(Level("pickets: { section: 30 x 40 mm, gap: 90 mm }")));
        var pickets = GuardPickets.Lay(layout, 2, Side.Right).ToList();
        Assert.Equal(7, pickets.Count);
        PicketGap[] gaps = [.. PicketGaps.InBay(layout, 2)];
        Assert.All(gaps[..^1], gap => Assert.Equal((0.9 / 7) - 0.04, gap.Clear, 1e-4));

        // Past the post of 64 mm, which stands a rail of 38 mm behind them, half a gap from either picket.
        Assert.Equal(Math.Sqrt(Math.Pow((0.45 / 7) - 0.02 - 0.032, 2) + Math.Pow(0.038, 2)), gaps[^1].Clear, 1e-4);
        var heights = GuardRails.Heights(layout, 1);
        var long_ = heights[1] - heights[0] + (4 * 0.0254 * 0.875);
        Assert.All(pickets, p => Assert.Equal(long_, p.Shape.Far.XAt(0, 0) - p.Shape.Near.XAt(0, 0), 2e-4));
    }

    // Round, 40 mm, its top 900 mm over the deck, 50 mm clear of posts that lean 8°: by hand from the post's face.
    [Fact]
    public void A_handrail_lies_where_the_hand_says()
    {
        var layout = Bridges.Layout(Bridges.Read(Level(
            "rails: { heights: [] }, handrail: { diameter: 40 mm, height: 900 mm, gap: 50 mm }")));
        var handrail = Assert.Single(GuardHandrails.Lay(layout, 2, Side.Right));
        var lean = 8 * Math.PI / 180;
        var over = layout.Parameters.Deck.Thickness + 0.88;
        Assert.Equal(layout.Levels[1].Top + over, handrail.Placement.Origin.Y - layout.Poses[1].Node.Y, 1e-4);
        Assert.Equal(
            layout.Parameters.Frames.Post.Foot + (over * Math.Tan(lean)) - (0.07 / Math.Cos(lean)), handrail.Placement.Origin.Z, 1e-9);

        // A regular polygon of sixteen sides around the circle.
        var (near, far) = handrail.Shape.LengthRange();
        Assert.Equal(4 * 0.04 * 0.04 * Math.Tan(Math.PI / 16) * (far - near), StockSolid.Build(handrail.Shape).OrNull!.Volume, 1e-6);
    }

    // Bays of 900 mm, cleats at most 400 mm apart: three, 300 mm apart, on the boards. On treads each lies on the middle of one.
    [Fact]
    public void Cleats_lie_on_the_deck_as_far_apart_as_by_hand()
    {
        var level = Level("handrail: { height: 900 mm }");
        var cleats = "deck: { grip: cleats, cleats: { section: 20 x 50 mm, spacing: 400 mm } }\n";
        var layout = Bridges.Layout(Bridges.Read(level + "\n" + cleats));
        var laid = DeckCleats.Lay(layout, 2).ToList();
        Assert.Equal(3, laid.Count);
        Assert.Equal(0.3, DeckCleats.Widest(layout, layout.Parameters.Deck.Cleats!), 1e-4);
        Assert.Equal(0.3, laid[1].Placement.Origin.X - laid[0].Placement.Origin.X, 1e-4);
        var top = layout.Levels[1].Top + layout.Parameters.Deck.Thickness;
        Assert.Equal(top + 0.01, laid[0].Placement.Origin.Y - layout.Poses[1].Node.Y, 1e-3);

        var onTreads = cleats.Replace("deck: {", "deck: { layout: across,", StringComparison.Ordinal);
        var across = Bridges.Layout(Bridges.Read(level + "\n" + onTreads));
        var treads = DeckTreads.Lay(across, 2, across.Parameters.Deck.Stringer!).Select(t => t.Placement.Origin.X).ToList();
        Assert.All(DeckCleats.Lay(across, 2), c => Assert.Contains(treads, x => Math.Abs(x - c.Placement.Origin.X) < 1e-3));
    }

    // A net's rail lies 3 mm over the deck, lower than the cleats: they end 10 mm inside it. 38 mm of deck and of rail, posts at 8°.
    [Fact]
    public void Cleats_end_beside_a_rail_that_lies_on_the_deck()
    {
        var layout = Bridges.Layout(Bridges.Read(Level("net: { opening: 50 mm, mass: 0.6 kg/m2, bottom: 3 mm }")
            + "\ndeck: { grip: cleats, cleats: { section: 20 x 50 mm, spacing: 400 mm } }\n"));
        var (near, far) = DeckCleats.Lay(layout, 2).First().Shape.LengthRange();
        var lean = 8 * Math.PI / 180;
        Assert.Equal(2 * (0.47 + (0.038 * Math.Tan(lean)) - (0.038 / Math.Cos(lean)) - 0.01), far - near, 1e-9);
    }

    /// <summary>
    /// The weight on the ropes is that of the wood that is drawn; of a round handrail of 2 in that of the circle, π/4 d² between its ends.
    /// </summary>
    [Fact]
    public void Pickets_and_handrails_weigh_on_the_ropes()
    {
        var layout = Bridges.Layout(Bridges.Read(Picketed));
        var bay = Members.Bay(layout, 5).Members;
        var mass = bay.Sum(m => Volume(m.Shape) * layout.Parameters.StockNamed(m.Stock).Density.InService);
        Assert.Equal(mass, BridgeMasses.Weigh(layout).Bays[4], mass * 1e-9);
        Assert.Contains(bay, m => m.Role == Role.Picket);
        Assert.Contains(bay, m => m.Role == Role.Handrail);

        static double Volume(CutStock shape) => shape.IsRound
            ? Math.PI / 4 * 2 * Inch * 2 * Inch * (shape.Far.XAt(0, 0) - shape.Near.XAt(0, 0))
            : StockSolid.Build(shape).OrNull!.Volume;
    }

    [Theory]
    [InlineData("gap: 3-1/2 in", false)]
    [InlineData("spacing: 6 in", true)]
    public void A_ball_of_4_in_finds_pickets_too_far_apart(string apart, bool passes)
    {
        var check = Contexts.Check(Picketed.Replace("gap: 3-1/2 in", apart, StringComparison.Ordinal), "guard-openings");
        Assert.Equal(passes ? BridgeForm.Checks.CheckStatus.Fail : BridgeForm.Checks.CheckStatus.Pass, check.Status);
        Assert.True(check.Demand / Inch < 6);
    }

    /// <summary>What stands past the post is asked of the post too: one picket less at a frame lets a ball through.</summary>
    [Fact]
    public void A_ball_that_a_missing_picket_lets_through_is_found()
    {
        var layout = Bridges.Layout(Bridges.Read(Picketed));
        var pickets = GuardPickets.Lay(layout, 3, Side.Right).ToList();
        Assert.True(PicketGap.Between(pickets[1], pickets[2]).Clear < 4 * Inch);
        Assert.True(PicketGap.Between(pickets[1], pickets[3]).Clear > 4 * Inch);
    }

    /// <summary>
    /// Random bridges with every part of the guard: closed solids of the volume that manifold-3d finds, all resting on what carries
    /// them, none in another beyond the seating tolerance, no gap beside a picket wider than asked for and its share of the fan.
    /// </summary>
    [Fact]
    [Trait("Category", "Referee")]
    public void Random_bridges_carry_every_part_of_their_guard()
    {
        var wanted = int.TryParse(Environment.GetEnvironmentVariable(Long), out var many) ? many : Few;
        var (bodies, solids, built) = (new List<CutBody>(), new List<(string Name, Solid Solid)>(), 0);
        for (var seed = 1; built < wanted && seed < 4 * wanted; seed++)
        {
            var parameters = Bridges.Read(Random(new Random(seed)));
            if (!Bridge.TryShape(parameters, out var rope, out _))
            {
                continue;
            }

            var layout = BridgeLayout.Lay(parameters, rope);
            if (!LayoutFit.Check(layout).IsEmpty)
            {
                continue;
            }

            built++;
            var members = Members.Lay(layout).SelectMany(g => g.Members).ToList();
            var found = ContactSweep.Sweep(layout, [.. members.Select(SweptPart.Of)], []);
            var faults = found.Overlaps.Concat(found.Gaps).Where(f => IsNew(f.First) || IsNew(f.Second));
            Assert.Equal("", string.Join("; ", faults.Select(f => $"seed {seed}: {f}")));
            foreach (var member in members.Where(m => IsNew(m.Id)).DistinctBy(m => (m.Owner, m.Role)))
            {
                solids.Add(($"seed {seed} {member.Id}", StockSolid.Build(member.Shape).OrNull!));
                bodies.Add(CutBody.Of(member.Shape));
            }

            foreach (var panel in GuardNet.Panels(layout))
            {
                solids.Add(($"seed {seed} {panel.Id}", StockSolid.Build(panel.Body).OrNull!));
                bodies.Add(CutBody.Of(panel.Body));
            }
        }

        Assert.True(built >= Math.Min(wanted, Few) / 2, $"{built} built");
        Assert.All(solids.Zip(Manifold.Ask(bodies)), pair =>
        {
            Assert.Equal(("NoError", 0), (pair.Second.Status, pair.Second.Open));
            Assert.Equal(pair.Second.Volume, pair.First.Solid.Volume, pair.First.Solid.Volume * 1e-6);
            Assert.Empty(pair.First.Solid.Audit());
        });
    }

    private static bool IsNew(string id) =>
        PartId.Read(id) is { Role: Role.Picket or Role.Handrail or Role.Cleat or Role.Newel or Role.Shim };

    private static string Random(Random random)
    {
        double Between(double low, double high) => low + (random.NextDouble() * (high - low));
        var across = random.NextDouble() < 0.3;
        var width = Between(24, 64);
        var pickets = string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"pickets: {{ section: {width:0.#} x {Between(12, width):0.#} mm, gap: {Between(40, 100):0.#} mm }}");
        var net = string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"net: {{ opening: {Between(20, 80):0.#} mm, mass: {Between(0.1, 3):0.##} kg/m2, bottom: {Between(0, 100):0.#} mm }}");
        var size = random.NextDouble() < 0.5 ? "diameter: 40 mm" : "section: 38 x 44 mm";
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $$"""
            name: Random (invented)
            units: metric
            site: { span: {{Between(4, 9):0.###}} m, rise: {{Between(-1, 1):0.###}} m }
            ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 1150 mm, sag: {{Between(3, 9):0.##}} % }
            frames:
              spacing: {{Between(700, 1300):0.#}} mm
              stance: {{(random.NextDouble() < 0.5 ? "plumb" : "square")}}
              base: { section: 89 x 140 mm, length: 1500 mm }
              channel: { depth: 26 mm, end_depth: {{Between(26, 40):0.#}} mm }
              post: { section: 64 x 89 mm, length: 1200 mm, lean: {{Between(0, 14):0.##}} deg, foot: 470 mm }
              brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
            deck:
              layout: {{(across ? "across" : "along")}}
              board: { section: 38 x 140 mm }
              grip: cleats
              cleats: { section: 19 x 60 mm, spacing: {{Between(120, 500):0.#}} mm }
            guard:
              rails: { section: 38 x 89 mm }
              cap: { section: 38 x 140 mm }
              {{(random.NextDouble() < 0.3 ? net : pickets)}}
              handrail: { {{size}}, height: {{Between(760, 900):0.#}} mm }
              newels: { section: 89 x 89 mm, gap: {{Between(13, 90):0.#}} mm, lean: {{Between(0, 14):0.##}} deg }
              shims: true
            """);
    }

    internal static string Level(string guard) => $$"""
        name: Level (invented)
        units: metric
        site: { span: 2700 mm }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 1150 mm, sag: 2 mm }
        frames:
          spacing: 901 mm
          stance: plumb
          base: { section: 89 x 140 mm, length: 1500 mm }
          channel: { depth: 26 mm, end_depth: 26 mm }
          post: { section: 64 x 89 mm, length: 1200 mm, lean: 8 deg, foot: 470 mm }
          brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
        guard: { cap: { section: 38 x 140 mm }, {{RailsOf(guard)}}{{guard}} }
        """;

    private static string RailsOf(string guard) =>
        guard.StartsWith("rails", StringComparison.Ordinal) ? "" : "rails: { section: 38 x 88.9 mm }, ";
}
