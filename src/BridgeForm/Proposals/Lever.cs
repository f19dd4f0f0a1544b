using System.Collections.Immutable;
using BridgeForm.Project;
using BridgeForm.Project.Files;

namespace BridgeForm.Proposals;

/// <summary>Which way a value is moved.</summary>
internal enum Way
{
    /// <summary>Larger, stronger, further, closer together for frames, deeper for a sag.</summary>
    More,

    /// <summary>The other way.</summary>
    Less,
}

/// <summary>A value of a design that may be moved, with whatever must go along with it.</summary>
/// <param name="Key">Its key in the project file.</param>
/// <param name="Steps">
/// From a design, the way, and the ratio by which something fails (1 for none): the changes of each step, nearest first.
/// </param>
internal sealed record Lever(string Key, Func<BridgeParameters, Way, double, IEnumerable<ImmutableArray<KeyChange>>> Steps);
