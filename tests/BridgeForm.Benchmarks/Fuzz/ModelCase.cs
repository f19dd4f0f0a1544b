using System.Collections.Immutable;
using System.Diagnostics;
using BridgeForm.Materials;
using BridgeForm.Project.Files;

namespace BridgeForm.Benchmarks.Fuzz;

/// <summary>One random bridge, built, audited and written: what was found, and what it cost.</summary>
/// <param name="Text">The project file.</param>
/// <param name="Fault">Why it cannot be built; null when it was.</param>
/// <param name="Bays">Number of bays; 0 when it was not built.</param>
/// <param name="Model">Processor time of the model alone, all threads, seconds.</param>
/// <param name="Findings">Everything that must not be: an exception, an open solid, a number without a finite value.</param>
internal sealed record ModelCase(string Text, BridgeFault? Fault, int Bays, double Model, ImmutableArray<string> Findings)
{
    /// <summary>Builds and writes the bridge of a project file.</summary>
    public static ModelCase Of(string text, bool written)
    {
        var begun = Processor();
        var (bays, cost, fault) = (0, 0.0, (BridgeFault?)null);
        try
        {
            var parameters = ProjectReader.Read(text, "random.yaml", RopeTable.Catalogue).Parameters!;
            if (!Bridge.TryBuild(parameters, out var model, out fault))
            {
                return new ModelCase(text, fault, 0, Processor() - begun, []);
            }

            (bays, cost) = (model.Frames.Length - 1, Processor() - begun);
            return new ModelCase(text, null, bays, cost, [.. SoundModel.Faults(model), .. written ? SoundFiles.Faults(model) : []]);
        }
        catch (Exception trouble)
        {
            return new ModelCase(text, fault, bays, cost, [trouble.ToString()]);
        }
    }

    private static double Processor()
    {
        using var process = Process.GetCurrentProcess();
        return process.TotalProcessorTime.TotalSeconds;
    }
}
