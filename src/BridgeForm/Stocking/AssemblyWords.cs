using System.Globalization;
using BridgeForm.Quantities;
using BridgeForm.Roles;

namespace BridgeForm.Stocking;

/// <summary>What is done in a step of the assembly, for people.</summary>
public static class AssemblyWords
{
    /// <summary>A sentence without a full stop.</summary>
    public static string Of(AssemblyStep step) => step.Work switch
    {
        AssemblyWork.BuildFrame when step.Parts.Any(p => PartId.Read(p) is { Role: Role.Shim }) =>
            "Build the frame on the ground: base with its crown up, posts, braces, cap shims on the posts' heads; each by its arrow",
        AssemblyWork.BuildFrame => "Build the frame on the ground: base with its crown up, posts, braces; each by its arrow",
        AssemblyWork.SetEndFrame when step.Parts.IsEmpty =>
            "Set the end frame on its landing and fasten it as the engineer drew; the ropes pass clear of it",
        AssemblyWork.SetEndFrame when step.Parts.Any(p => PartId.Read(p) is { Role: Role.Newel }) =>
            "Set the end frame on its landing, the ropes clear of it, and fasten it as the engineer drew; fix the tapered shim on the base "
                + "where there is one, then set the newels on the landing, in line with the posts",
        AssemblyWork.SetEndFrame =>
            "Set the end frame on its landing, the ropes clear of it, and fasten it as the engineer drew; fix the tapered shim on the base",
        AssemblyWork.HangFrame when step.Parts.IsEmpty => "Hang the frame on the ropes at its marks and close its keepers",
        AssemblyWork.HangFrame => "Hang the frame on the ropes at its marks and close its keepers; fix the tapered shim on the base",
        AssemblyWork.LayDeck => "Lay the deck from frame to frame, each board fixed at one end",
        AssemblyWork.FixRails when step.Parts.Any(p => PartId.Read(p) is { Role: Role.Handrail }) =>
            "Fix the rails to the posts' inner faces, lowest first, then the handrails on their brackets",
        AssemblyWork.FixRails => "Fix the rails to the posts' inner faces, lowest first",
        AssemblyWork.FixCaps => "Lay the caps on the posts' heads",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step.Work, "No such work."),
    };

    /// <summary>Cross slope with both of the crew beside one guard; in words where they turn the frames over.</summary>
    public static string Tilt(CrewOnStage crew) => crew.Tilt is { } tilt
        ? QuantityText.Degrees(Elementary.Atan(tilt))
        : crew.Steepest is null ? "IT TURNS OVER, with all in the middle too" : "IT TURNS OVER";

    /// <summary>What must hold a stage that they turn over.</summary>
    public static string SideStays(CrewOnStage crew) => "side stays hold it as the engineer drew them: the crew "
        + (crew.Steepest is null ? "turns it over here, in the middle of the deck too" : "beside one guard turns it over here");

    /// <summary>What must be so at a stage that two beside a guard tilt more than a bridge in use may.</summary>
    public static string OneByOne(CrewOnStage crew) => "from here on one person at a time is at either end, in the middle of the deck, and "
        + $"says so to the others: two beside a guard tilt it by {Tilt(crew)} here";

    /// <summary>The same for a stage that is not worked out, beside one that they turn over.</summary>
    public static string SideStaysLike(int stage) => "side stays hold it as the engineer drew them: this stage is not worked out by "
        + $"itself; at stage {stage.ToString(CultureInfo.InvariantCulture)} beside it the crew turns it over";
}
