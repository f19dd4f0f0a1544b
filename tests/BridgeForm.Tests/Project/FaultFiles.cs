using BridgeForm.Project.Reading.Faults;

namespace BridgeForm.Tests.Project;

/// <summary>For each code a project file or price list, as short as can be, that is wrong in this way.</summary>
internal static class FaultFiles
{
    private const string Head = "name: a\nsite: { span: 30 ft }\n";

    /// <summary>Files that are told of when they are read.</summary>
    public static Dictionary<FaultCode, string> Projects { get; } = new()
    {
        [FaultCode.FileTooLarge] = new('#', 1_000_001),
        [FaultCode.BadCharacter] = "name: a\u0007\n",
        [FaultCode.NotYaml] = "name: [\n",
        [FaultCode.TooDeep] = "name: " + new string('[', 20) + new string(']', 20) + "\n",
        [FaultCode.SecondDocument] = Head + "---\nname: b\n",
        [FaultCode.YamlAlias] = Head + "use: *x\n",
        [FaultCode.YamlAnchor] = Head + "use: &x private\n",
        [FaultCode.YamlTag] = Head + "use: !!str private\n",
        [FaultCode.KeyIsNoWord] = Head + "[a]: b\n",
        [FaultCode.RepeatedKey] = Head + "name: b\n",
        [FaultCode.NotAProject] = "a bridge\n",
        [FaultCode.WrongShape] = Head + "use: [private]\n",
        [FaultCode.UnknownKey] = Head + "usage: private\n",
        [FaultCode.KeysExclude] = Head + "guard: { rails: { count: 5, heights: [12 in] } }\n",
        [FaultCode.MissingKey] = "site: { span: 30 ft }\n",
        [FaultCode.TooManyNames] = Head
            + "stock: { " + string.Join(", ", Enumerable.Range(0, 2000).Select(i => $"s{i}: {{ lengths: [8 ft] }}")) + " }\n",
        [FaultCode.BadName] = Head + "stock: { a.b: { lengths: [8 ft] } }\n",
        [FaultCode.UnknownName] = Head + "fasteners: { glue: 4 }\n",
        [FaultCode.EntryCount] = "name: a\nsite: { span: 30 ft, ground: [[0 ft, -4 ft, 1 ft], [30 ft, -4 ft]] }\n",
        [FaultCode.BadText] = "name: \"\"\nsite: { span: 30 ft }\n",
        [FaultCode.UnknownChoice] = Head + "use: secret\n",
        [FaultCode.NotWhole] = Head + "deck: { count: 2.5 }\n",
        [FaultCode.NotNumber] = Head + "ropes: { safety_factor: five }\n",
        [FaultCode.NotFlag] = Head + "shop: { tabs: maybe }\n",
        [FaultCode.NotSection] = Head + "deck: { board: { section: 2x7 } }\n",
        [FaultCode.NotQuantity] = "name: a\nsite: { span: 30 }\n",
        [FaultCode.OutOfRange] = "name: a\nsite: { span: 1 in }\n",
        [FaultCode.UnknownRope] = Head + "ropes: { type: string }\n",
        [FaultCode.UnknownSpecies] = Head
            + "stock: { treated: { species: ironwood, lengths: [8 ft] }, cedar: { species: western-red-cedar, lengths: [8 ft] } }\n",
        [FaultCode.UnknownStock] = Head + "deck: { board: { stock: oak } }\n",
        [FaultCode.UnknownGrade] = Head + "stock: { treated: { species: southern-pine, grade: finest, lengths: [8 ft] }, cedar: { species: "
            + "western-red-cedar, lengths: [8 ft] } }\n",
        [FaultCode.UnknownSize] = Head
            + "values: [{ species: southern-pine, grade: no1, size: huge, bending: 700 psi, tension: 400 psi, shear: 120 psi,"
            + " compression_across: 300 psi, compression: 600 psi, modulus: 1.1 GPa, source: mill }]\n",
        [FaultCode.SagOutOfRange] = Head + "ropes: { sag: 31 % }\n",
        [FaultCode.RiseTooSteep] = "name: a\nsite: { span: 30 ft, rise: 11 ft }\n",
        [FaultCode.EndSlopeTooSteep] = Head + "ropes: { sag: 28 % }\n",
        [FaultCode.TooManyFrames] = "name: a\nsite: { span: 20000 ft }\nframes: { spacing: 4.7 in, base: { section: 4x4 } }\n",
        [FaultCode.NoFrameBetween] = "name: a\nsite: { span: 20 ft }\nframes: { spacing: 25 ft }\n",
        [FaultCode.FramesTouch] = Head + "frames: { spacing: 5 in, base: { section: 4x6, flat: true } }\n",
        [FaultCode.GroundOutOfOrder] = "name: a\nsite: { span: 30 ft, ground: [[5 ft, -4 ft], [4 ft, -4 ft]] }\n",
        [FaultCode.SurveyOutOfOrder] = "name: a\nsite: { survey: { out: [[0 ft, 5 ft], [30 ft, 4 ft], [20 ft, 9 ft]] } }\n",
        [FaultCode.SurveyContradicts] = "name: a\nsite: { span: 31 ft, survey: { out: [[0 ft, 5 ft], [30 ft, 4 ft]] } }\n",
        [FaultCode.StretchReversed] = Head + "ropes: { stretch: [0.5 %, 0.25 %] }\n",
        [FaultCode.StretchNotKnown] = Head + "ropes: { new: as-is, type: { diameter: 3/4 in, mass_per_length: 1.04 lb/ft, "
            + "breaking_strength: 52000 lbf, metallic_area: 0.27 in2, modulus: 13500 ksi } }\n",
        [FaultCode.ClipsHoldLess] = Head + "ropes: { termination: { kind: clips, efficiency: 85 % } }\n",
        [FaultCode.RopeTooStrong] = Head + "ropes: { type: { diameter: 19 mm, mass_per_length: 1.55 kg/m, breaking_strength: 395 kN, "
            + "metallic_area: 175 mm2, modulus: 100 GPa } }\n",
        [FaultCode.RopeTooFull] = Head + "ropes: { type: { diameter: 1/2 in, mass_per_length: 0.62 lb/ft, breaking_strength: 26600 lbf, "
            + "metallic_area: 0.18 in2, modulus: 13500 ksi } }\n",
        [FaultCode.RopeTooHeavy] = Head + "ropes: { type: { diameter: 3/4 in, mass_per_length: 1.52 lb/ft, breaking_strength: 52000 lbf, "
            + "metallic_area: 0.27 in2, modulus: 13500 ksi } }\n",
        [FaultCode.RopeTooLight] = Head + "ropes: { type: { diameter: 3/4 in, mass_per_length: 0.82 lb/ft, breaking_strength: 52000 lbf, "
            + "metallic_area: 0.27 in2, modulus: 13500 ksi } }\n",
        [FaultCode.RopeTooStiff] = Head + "ropes: { type: { diameter: 3/4 in, mass_per_length: 1.04 lb/ft, breaking_strength: 52000 lbf, "
            + "metallic_area: 0.27 in2, modulus: 30500 ksi } }\n",
        [FaultCode.TemperaturesOneSided] = "name: a\nsite: { span: 30 ft, temperatures: [70 F, 100 F] }\n",
        [FaultCode.LimitLooser] = Head + "use: public\nlimits: { cross_slope: 6 deg }\n",
        [FaultCode.ChannelCutsThrough] = Head + "frames: { channel: { depth: 11 in } }\n",
        [FaultCode.ChannelTooNarrow] = Head + "frames: { channel: { width: 0.3 in } }\n",
        [FaultCode.ChannelsMeet] = Head + "ropes: { spacing: 6 in }\nframes: { channel: { width: 6 in } }\n",
        [FaultCode.ChannelOverEnd] = Head + "ropes: { spacing: 80 in }\nframes: { base: { length: 56 in } }\n",
        [FaultCode.KeeperTooWide] = Head + "frames: { base: { section: 2x6 }, keeper: { hole: 1-3/4 in } }\n",
        [FaultCode.KeeperThrough] = Head + "frames: { keeper: { depth: 11 in } }\n",
        [FaultCode.KeeperInChannel] = Head + "frames: { keeper: { spread: 1/2 in } }\n",
        [FaultCode.KeepersMeet] = Head + "ropes: { spacing: 6 in }\nframes: { keeper: { spread: 7 in } }\n",
        [FaultCode.KeeperOverEnd] = Head + "ropes: { spacing: 54 in }\nframes: { base: { length: 56 in }, post: { foot: 17-3/4 in } }\n",
        [FaultCode.PostOverEnd] = Head + "frames: { base: { length: 56 in }, post: { foot: 40 in } }\n",
        [FaultCode.BraceNeverMeets] = Head + "frames: { post: { lean: 0 deg }, brace: { lean: 0 deg } }\n",
        [FaultCode.BraceOutOfPlace] = Head + "frames: { brace: { foot: 40 in } }\n",
        [FaultCode.NoPlaceForBrace] = Head + "frames: { base: { length: 56 in }, post: { foot: 17-3/4 in }, brace: { lean: 75 deg } }\n",
        [FaultCode.StringerUnused] = Head + "deck: { layout: along, stringer: { section: 2x6, count: 3 } }\n",
        [FaultCode.TooManyBoards] = Head + "deck: { count: 20 }\n",
        [FaultCode.DeckTooNarrow] = Head + "deck: { side_gap: 17 in }\n",
        [FaultCode.TooManyStringers] = Head + "deck: { layout: across, stringer: { count: 40 } }\n",
        [FaultCode.TooManyRails] = Head + "guard: { rails: { count: 30 } }\n",
        [FaultCode.RailOutOfGuard] = Head + "guard: { rails: { heights: [1 in] } }\n",
        [FaultCode.RailOnRail] = Head + "guard: { rails: { heights: [12 in, 13 in] } }\n",
        [FaultCode.CleatsUnused] = Head + "deck: { grip: grit, cleats: { spacing: 12 in } }\n",
        [FaultCode.CleatsTooClose] = Head + "deck: { grip: cleats, cleats: { section: 1x4, spacing: 6 in } }\n",
        [FaultCode.RailsAndPickets] = Head + "guard: { rails: { count: 4 }, pickets: { gap: 3 in } }\n",
        [FaultCode.PicketsOverlap] = Head + "guard: { pickets: { section: 2x2, spacing: 1-1/4 in } }\n",
        [FaultCode.PicketsWithoutRoom] = Head + "guard: { rails: { section: 2x12 }, pickets: { gap: 12 in } }\n",
        [FaultCode.RailsAndNet] = Head + "guard: { rails: { count: 4 }, net: { opening: 2 in, mass: 0.1 lb/ft2 } }\n",
        [FaultCode.PicketsAndNet] = Head + "guard: { pickets: { gap: 3 in }, net: { opening: 2 in, mass: 0.1 lb/ft2 } }\n",
        [FaultCode.NetWithoutRoom] = Head
            + "frames: { post: { length: 12 in } }\nguard: { net: { opening: 2 in, mass: 0.1 lb/ft2, bottom: 12 in } }\n",
        [FaultCode.HandrailAboveCap] = Head + "guard: { handrail: { height: 50 in } }\n",
        [FaultCode.NewelOffLanding] =
            "name: a\nsite: { span: 30 ft, a: { landing: { gap: 2 in } } }\nguard: { newels: { gap: 1/2 in } }\n",
        [FaultCode.BearerWithoutLanding] = "name: a\nsite: { span: 30 ft, a: { landing: { bearer: sill } } }\n",
        [FaultCode.HoleTooWide] = Head + "holes: { brace: [{ face: top, from_end: 5 in, diameter: 2 in }] }\n",
        [FaultCode.HoleOutsidePart] = Head + "holes: { post: [{ from_end: 90 in, diameter: 1/2 in }] }\n",
        [FaultCode.HoleOffFace] = Head + "holes: { post: [{ from_end: 6 in, across: 8 in, diameter: 1/2 in }] }\n",
        [FaultCode.HoleThrough] = Head + "holes: { post: [{ from_end: 6 in, diameter: 1/2 in, depth: 11 in }] }\n",
        [FaultCode.DensityReversed] = Head + Density("low: 700 kg/m3, high: 500 kg/m3"),
        [FaultCode.JointCapacity] = Head + "joints: { post-foot: { kind: bracket } }\n",
        [FaultCode.JointBolt] = Head + "joints: { post-foot: { bolt: 0.4 in } }\n",
        [FaultCode.JointThickness] = Head + "joints: { brace-foot: { count: 2 } }\n",
        [FaultCode.JointDistance] = Head + "joints: { post-foot: { bolt: 3/8 in, end: 1 in } }\n",
        [FaultCode.JointClash] = Head + "joints: { post-foot: { bolt: 3/8 in, plate: { width: 6 in } } }\n",
        [FaultCode.JointTwice] = Head + "joints: { rail: { count: 2 } }\nfasteners: { rail: 2 }\n",
        [FaultCode.ScrewRoom] = Head + "joints: { rail: { length: 1-1/2 in } }\n",
        [FaultCode.DensityOutside] = Head + Density("low: 500 kg/m3, in_service: 800 kg/m3, high: 700 kg/m3"),
        [FaultCode.EdgeBeyondMiddle] = Head + "loads: { point: { edge: 30 in } }\n",
        [FaultCode.CaseIdTaken] = Head + "loads: { cases: [{ id: dead, force: 100 lbf, at: 5 ft }] }\n",
        [FaultCode.LoadBeyondBridge] = Head + "loads: { cases: [{ id: cart, force: 100 lbf, at: 31 ft }] }\n",
        [FaultCode.LoadReversed] = Head + "loads: { cases: [{ id: herd, live: 80 psf, from: 9 ft, to: 5 ft }] }\n",
        [FaultCode.RateWithoutUnit] = Head + "quote: { rates: { rope: 4.20 } }\n",
        [FaultCode.RatesInTwoMoneys] = Head + "quote: { rates: { rope: 4 USD/ft, clip: 3 EUR/each } }\n",
        [FaultCode.DateNotRead] = Head + "sheets: { issued: 20 May 2031 }\n",
        [FaultCode.PrintBed] = Head + "shop: { print: { bed: large } }\n",
        [FaultCode.PrintTooLarge] = Head + "shop: { print: { scale: 1:5 } }\n",
        [FaultCode.PrintTooThick] = Head + "shop: { print: { thinnest: 5 mm } }\n",
        [FaultCode.SheetTextTooLong] = Head + "sheets: { revisions: [{ index: First, change: new deck }] }\n",
        [FaultCode.AsBuiltOtherBridge] = Head
            + "as_built: { temperature: 50 F, span: 36 ft, sag: { left: 20 in, right: 20 in } }\n",
        [FaultCode.AsBuiltOtherRope] = Head + "as_built: { temperature: 50 F, sag: { left: 20 in, right: 20 ft } }\n",
    };

    /// <summary>Price lists.</summary>
    public static Dictionary<FaultCode, string> Prices { get; } = new()
    {
        [FaultCode.PricesEmpty] = "",
        [FaultCode.PriceColumns] = "stock,section,price\n",
        [FaultCode.PriceStock] = "stock,section,length,price\noak,2x4,8 ft,1\n",
        [FaultCode.PriceLength] = "stock,section,length,price\ntreated,2x4,9 ft,1\n",
        [FaultCode.BadPrice] = "stock,section,length,price\ntreated,2x4,8 ft,free\n",
        [FaultCode.PriceTwice] = "stock,section,length,price\ntreated,2x4,8 ft,1\ntreated,2x4,96 in,2\n",
    };

    /// <summary>Files of which every key is right and of which no bridge can be cut.</summary>
    public static Dictionary<FaultCode, string> Impossible { get; } = new()
    {
        [FaultCode.PostsCross] =
            "name: a\nsite: { span: 36 in }\nropes: { sag: 10 % }\nframes: { spacing: 9 in, post: { length: 47 in } }\n",
        [FaultCode.RailsOverlap] = Head + """
            ropes: { spacing: 46 in, sag: 18 % }
            frames:
              base: { section: 4x6, length: 58 in }
              channel: { depth: 1 in, end_depth: 1-1/2 in }
              post: { section: 3x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
              brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }
            guard: { rails: { section: 1x4, count: 10 } }
            """,
        [FaultCode.LandingAboveGuard] =
            "name: a\nsite: { span: 30 ft, a: { landing: { level: 6 ft } } }\nguard: { newels: { gap: 2 in } }\n",
        [FaultCode.NoTreadFits] = "name: a\nsite: { span: 10 ft }\nframes: { spacing: 7.6 in, stance: plumb }\n"
            + "deck: { layout: across, board: { section: 2x8 }, gap: 1/4 in, count: auto }\n",
        [FaultCode.PostHeadRunsOut] = """
            name: a
            site: { span: 12 ft, rise: 4 ft }
            ropes: { sag: 16 % }
            frames:
              stance: plumb
              base: { length: 100 in }
              post: { section: 16x16, length: 6-1/2 in, foot: 18 in, lean: 0 deg }
              brace: { foot: 38 in, lean: 60 deg, section: 1x2 }
            guard: { rails: { count: 1, section: 1x2 } }
            """,
        [FaultCode.DeckWithoutLength] = """
            name: a
            site: { span: 3 ft }
            ropes: { sag: 25 % }
            frames:
              spacing: 4 in
              base: { section: 2x4, length: 70 in }
              keeper: { hole: 0 in }
              channel: { end_depth: 1 in, depth: 1 in }
              post: { length: 15 in, foot: 14 in, section: 1x2 }
              brace: { length: 5 in, section: 1x2 }
            deck: { butt_gap: 2 in, board: { section: 12x12 } }
            guard: { rails: { heights: [13 in], section: 1x2 } }
            """,
        [FaultCode.RailBelowDeck] = """
            name: a
            site: { span: 30 ft, rise: 4 ft }
            ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 46 in, sag: 10 % }
            frames:
              spacing: 3 ft
              base: { section: 4x4, length: 58 in }
              channel: { end_depth: 2 in, depth: 1/2 in, liner: 0 in }
              post: { section: 2x4, foot: 17-3/4 in }
            deck: { side_gap: 1/2 in }
            guard: { rails: { section: 1x4, heights: [3-5/16 in, 12 in] } }
            """,
        [FaultCode.TreadsTooClose] = Head + "deck: { layout: across, count: 7 }\n",
    };

    private static string Density(string keys) =>
        "stock: { treated: { species: southern-pine, lengths: [8 ft], density: { "
            + keys + " } }, cedar: { species: western-red-cedar, lengths: [8 ft] } }\n";
}
