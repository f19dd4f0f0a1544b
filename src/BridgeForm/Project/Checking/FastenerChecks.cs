using BridgeForm.Quantities;

namespace BridgeForm.Project.Checking;

/// <summary>Joints that there are.</summary>
internal static class FastenerChecks
{
    public static void Run(CheckedFile f)
    {
        foreach (var name in f.Values.Names("fasteners").Where(n => !JointNames.All.Contains(n.Replace('_', '-'), StringComparer.OrdinalIgnoreCase)))
        {
            var hint = NearestWord.Of(name, JointNames.All) is { } nearest ? $"did you mean {nearest}?" : $"joints are {string.Join(", ", JointNames.All)}";
            f.Stop("fasteners." + name, $"{QuantityReader.Quote(name)} is not a joint under fasteners; {hint}");
        }
    }
}
