using BridgeForm.Materials;
using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>The key <c>ropes.type</c>: a rope of the built-in table, or the keys of one of the user's own.</summary>
internal static class RopeTypeSection
{
    public static KeySpec Keys => new("type", KeyShape.Value, "Key of the built-in table, or a mapping that describes a rope")
    {
        Type = ValueForm.Rope,
        ByRule = true,
        Follows = "the pull that span, sag, width and loads make likely",
        DefaultNote = "the thinnest of ropes.on_sale, or of rope-6x19-iwrc-eips-galvanized (metric: rope-6x19-iwrc-1770), that holds "
            + "1.035 times an estimated pull × ropes.safety_factor / efficiency of the ends (80 % where none is given), and the thickest "
            + "where none does. The pull: a parabola of this span, rise and sag under the larger of loads.live and loads.snow on the clear "
            + "width × loads.eccentricity, half of 22 psf (metric: 1.26 kPa) of freshly treated bridge on that width, and the rope, at the "
            + "coldest of site.temperatures, stretched as the rope stretches",
        Example = "rope-6x19-iwrc-eips-galvanized-7/8",
        MetricExample = "rope-6x19-iwrc-1770-22-mm",
        Keys =
        [
            Define.Length("diameter", "Nominal diameter", "1/16 in", "6 in").Needed("3/4 in", "19 mm"),
            Define.Quantity(QuantityKind.MassPerLength, "mass_per_length", "Mass per length", "0.001 lb/ft", "100 lb/ft")
                .Needed("1.04 lb/ft", "1.55 kg/m"),
            Define.Quantity(QuantityKind.Force, "breaking_strength", "Minimum breaking strength of the rope", "50 lbf", "5000000 lbf")
                .Needed("52900 lbf", "235 kN"),
            Define.Quantity(QuantityKind.Area, "metallic_area", "Area of the wires", "0.0005 in2", "30 in2").Needed("0.27 in2", "175 mm2"),
            Define.Quantity(QuantityKind.Stress, "modulus", "Modulus of the rope, not of its steel", "4351 ksi", "32000 ksi")
                .Needed("15000 ksi", "100 GPa"),
            Define.Flag("galvanized", "Zinc coated", "false"),
            Define.Text("source", "Where these numbers come from", "the project file"),
        ],
    };

    public static RopeProperties Read(FileValues v, RopeCatalogue ropes, FaultList faults)
    {
        if (v.Find("ropes.type.diameter") is not null)
        {
            return Own(v);
        }

        var key = v.Text("ropes.type");
        if (ropes.Find(key) is { } rope)
        {
            return rope;
        }

        faults.Add(FaultCode.UnknownRope, v.Place("ropes.type"), RopeHint.Message(key, ropes));
        v.Set("ropes.type", v.Find("ropes.type")! with { Good = false });
        return StandIn;
    }

    /// <summary>No wire is drawn so strong, pascals (own figure): strength or area has a wrong unit or a lost digit.</summary>
    private const double StrongestWire = 2.2e9;

    /// <summary>
    /// Wires fill no more of a rope's circle than this (own figure: locked coils some 0.88, strand 0.76, wire rope 0.4 to 0.62).
    /// </summary>
    private const double FullestCircle = 0.9;

    private const double LightestShare = 0.9;

    /// <summary>Young's modulus of steel, pascals (common practice, no source).</summary>
    private const double SolidSteel = 210e9;

    /// <summary>A rope of the user's own has no more wire than its diameter holds.</summary>
    public static void CheckArea(CheckedFile f)
    {
        const string Area = "ropes.type.metallic_area", Diameter = "ropes.type.diameter";
        var rope = f.Parameters.Ropes.Rope;
        var circle = Math.PI / 4 * rope.Diameter * rope.Diameter;
        if (!f.Values.Given(Area) || !f.Good(Area, Diameter) || rope.MetallicArea <= FullestCircle * circle * (1 + Tolerances.RoundOff))
        {
            return;
        }

        var times = NumberText.By("0.0#", rope.MetallicArea / circle);
        f.Stop(FaultCode.RopeTooFull, Area, $"metallic_area: '{f.Written(Area)}' is {times} times the "
            + $"circle of diameter '{f.Written(Diameter)}'; wires fill at most 0.9 of it: look at both and their units");
    }

    /// <summary>A rope of the user's own is not heavier than a solid bar of steel as thick as it.</summary>
    public static void CheckMass(CheckedFile f)
    {
        const string Mass = "ropes.type.mass_per_length", Diameter = "ropes.type.diameter";
        var rope = f.Parameters.Ropes.Rope;
        var bar = SteelRope.SteelDensity * Math.PI / 4 * rope.Diameter * rope.Diameter;
        if (!f.Values.Given(Mass) || !f.Good(Mass, Diameter) || rope.MassPerLength <= bar * (1 + Tolerances.RoundOff))
        {
            return;
        }

        var times = NumberText.By("0.0#", rope.MassPerLength / bar);
        f.Stop(FaultCode.RopeTooHeavy, Mass, $"mass_per_length: '{f.Written(Mass)}' is {times} times the weight of a solid bar of steel "
            + $"of diameter '{f.Written(Diameter)}'; no rope is heavier than that: look at both and their units");
    }

    /// <summary>
    /// A rope of the user's own weighs what the steel of its metallic area does, and more: wires lie at an angle, and carry
    /// lubricant. A tenth less is left for areas that are rounded up (own figure).
    /// </summary>
    public static void CheckLightness(CheckedFile f)
    {
        const string Mass = "ropes.type.mass_per_length", Area = "ropes.type.metallic_area";
        var rope = f.Parameters.Ropes.Rope;
        var steel = SteelRope.SteelDensity * rope.MetallicArea;
        if (!f.Values.Given(Mass) || !f.Good(Mass, Area) || rope.MassPerLength >= LightestShare * steel * (1 - Tolerances.RoundOff))
        {
            return;
        }

        var share = NumberText.By("0.0#", rope.MassPerLength / steel);
        f.Stop(FaultCode.RopeTooLight, Mass, $"mass_per_length: '{f.Written(Mass)}' is {share} times the weight of steel of "
            + $"metallic_area '{f.Written(Area)}'; a rope of steel weighs at least 0.9 of it: look at both and their units");
    }

    /// <summary>A rope of the user's own is not stiffer than a solid bar of steel.</summary>
    public static void CheckModulus(CheckedFile f)
    {
        const string Modulus = "ropes.type.modulus";
        if (!f.Values.Given(Modulus) || !f.Good(Modulus) || f.Parameters.Ropes.Rope.Modulus <= SolidSteel * (1 + Tolerances.RoundOff))
        {
            return;
        }

        f.Stop(FaultCode.RopeTooStiff, Modulus, $"modulus: '{f.Written(Modulus)}' is above the 210 GPa (30458 ksi) of solid steel; a "
            + "rope's own is lower, for its wires lie at an angle: look at it and its unit");
    }

    /// <summary>A rope of the user's own is not stronger than its wires can be.</summary>
    public static void Check(CheckedFile f)
    {
        const string Strength = "ropes.type.breaking_strength", Area = "ropes.type.metallic_area";
        var rope = f.Parameters.Ropes.Rope;
        if (!f.Values.Given(Strength) || !f.Good(Strength, Area)
            || rope.BreakingStrength <= StrongestWire * rope.MetallicArea * (1 + Tolerances.RoundOff))
        {
            return;
        }

        var stress = NumberText.By("0.0#", rope.BreakingStrength / rope.MetallicArea / 1e9);
        f.Stop(FaultCode.RopeTooStrong, Strength, $"breaking_strength: '{f.Written(Strength)}' over metallic_area '{f.Written(Area)}' is "
            + $"{stress} GPa; no wire holds more than 2.2 GPa: look at both and their units");
    }

    private static RopeProperties Own(FileValues v) => new()
    {
        Name = "own rope " + new QuantityText(v.Units).Size(v.Number("ropes.type.diameter")),
        Kind = RopeKind.Custom,
        Diameter = v.Number("ropes.type.diameter"),
        MassPerLength = v.Number("ropes.type.mass_per_length"),
        BreakingStrength = v.Number("ropes.type.breaking_strength"),
        MetallicArea = v.Number("ropes.type.metallic_area"),
        Modulus = v.Number("ropes.type.modulus"),
        Galvanized = v.Flag("ropes.type.galvanized"),
        Source = v.Text("ropes.type.source"),
    };

    // Stands in for a rope with a fault, so that the rest of the file can be read; it never leaves the reader.
    private static RopeProperties StandIn => new()
    {
        Name = "",
        Kind = RopeKind.Custom,
        Diameter = 0.01,
        MassPerLength = 1,
        BreakingStrength = 1,
        MetallicArea = 1,
        Modulus = 1,
        Galvanized = false,
        Source = "",
    };
}
