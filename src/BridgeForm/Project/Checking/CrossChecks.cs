using BridgeForm.Project.Reading;

namespace BridgeForm.Project.Checking;

/// <summary>Faults of how the file's values go together: what could not be built or computed at all.</summary>
internal static class CrossChecks
{
    public static void Run(FileValues v, BridgeParameters p, FaultList faults)
    {
    }
}
