using BridgeForm.Frames;
using BridgeForm.Materials;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Tests;

/// <summary>Bridges to test with, written as a builder would write them.</summary>
internal static class Bridges
{
    public const string Garden = """
        name: A garden bridge (invented)
        units: imperial
        use: private
        site: { span: 30 ft }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 46 in, sag: 6 % }
        frames:
          spacing: 3 ft
          base: { section: 4x6, length: 58 in }
          channel: { clearance: 1/8 in, depth: 5/8 in, end_depth: 3/4 in }
          post: { section: 2x4, length: 40 in, lean: 8 deg, foot: 18-1/4 in }
          brace: { section: 2x4, lean: 12 deg, foot: 28-1/4 in }
        """;

    public const string Inclined = """
        name: An inclined bridge (invented)
        units: metric
        use: private
        site: { span: 12 m, rise: 2 m }
        ropes: { type: rope-6x19-iwrc-eips-galvanized-3/4, spacing: 1200 mm, sag: 5 % }
        frames:
          spacing: 1 m
          stance: plumb
          base: { section: 89 x 140 mm, length: 1500 mm }
          channel: { clearance: 3 mm, depth: 26 mm, end_depth: 34 mm }
          post: { section: 38 x 89 mm, length: 1020 mm, lean: 8 deg, foot: 470 mm }
          brace: { section: 38 x 89 mm, lean: 12 deg, foot: 725 mm }
        """ + "\n" + MetricPine;

    /// <summary>Lumber of North American kinds by its millimetres, for metric bridges whose numbers were worked out in it.</summary>
    public const string MetricPine = """
        stock:
          treated:
            species: southern-pine
            grade: no1
            treated: true
            lengths: [2.4 m, 3 m, 3.6 m, 4.8 m]
            sections: [38 x 89 mm, 38 x 140 mm, 64 x 89 mm, 64 x 140 mm, 64 x 184 mm, 89 x 140 mm]
          cedar:
            species: western-red-cedar
            grade: no2
            lengths: [2.4 m, 3 m, 3.6 m]
            sections: [19 x 89 mm, 38 x 89 mm, 38 x 140 mm]
        """;

    public static RopeCatalogue Catalogue => RopeTable.Catalogue;

    /// <summary>Parameters of a file that need have no more keys than a test is about; <see cref="Ground"/> has the others.</summary>
    public static BridgeParameters Read(string text)
    {
        var reading = ProjectReader.Read(Ground.Under(text), "test.yaml", Catalogue);
        return reading.Parameters
            ?? throw new InvalidOperationException(string.Join(Environment.NewLine, reading.Faults));
    }

    /// <summary>Live load evenly on both ropes, under which nothing leans; a project file may ask for 55 % on one at least.</summary>
    public static BridgeParameters Even(string text)
    {
        var parameters = Read(text);
        return parameters with { Loads = parameters.Loads with { Eccentricity = 0.5 } };
    }

    public static BridgeLayout Layout(BridgeParameters parameters) =>
        Bridge.TryShape(parameters, out var rope, out var fault)
            ? BridgeLayout.Lay(parameters, rope)
            : throw new InvalidOperationException(fault.Message);

    public static BridgeModel Build(BridgeParameters parameters) =>
        Bridge.TryBuild(parameters, out var model, out var fault)
            ? model
            : throw new InvalidOperationException(fault.Message);

    public static BridgeModel Build(string text) => Build(Read(text));

    public static double Degrees(double radians) => radians * 180 / Math.PI;

    public static double Radians(double degrees) => degrees * Math.PI / 180;
}
