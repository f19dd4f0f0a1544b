using System.Collections.Immutable;
using BridgeForm.Frames;
using BridgeForm.Project.Files;
using BridgeForm.Project.Reading;

namespace BridgeForm;

/// <summary>What does not fit on the shape that was found, as faults of the project file: with key, place and what would be right.</summary>
public static class FitFaults
{
    /// <summary>One fault a misfit, in the order of the file.</summary>
    /// <param name="reading">The file, read without a fault.</param>
    /// <param name="misfits">What <see cref="Bridge.TryBuild"/> found.</param>
    public static ImmutableArray<ProjectFault> Of(ProjectReading reading, ImmutableArray<Misfit> misfits) =>
        [.. misfits.Select(m => Of(reading, m)).OrderBy(f => f.Line).ThenBy(f => f.Column)];

    private static ProjectFault Of(ProjectReading reading, Misfit misfit)
    {
        var values = reading.Values!;
        var at = values.Given(misfit.Key) ? misfit.Key : misfit.Others.FirstOrDefault(o => values.Given(o)) ?? misfit.Key;
        var place = values.Place(at);
        return new ProjectFault(
            place.Line, place.Column, $"{misfit.Key}: with '{values.Find(misfit.Key)?.Text}'{(values.Given(misfit.Key) ? "" : " (its default)")} {misfit.What}; {Advice(reading, misfit)}");
    }

    private static string Advice(ProjectReading reading, Misfit misfit)
    {
        var others = string.Join(" or ", misfit.Others);
        return new NearestValue(reading, misfit.Key).Find() is var (text, isLess)
            ? $"all else kept, write {(isLess ? "at most" : "at least")} {text}, or change {others}"
            : $"all else kept, no value of {misfit.Key} in its range works; change {others}";
    }
}
