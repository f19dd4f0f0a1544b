using BridgeForm.Loads;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Preview;

/// <summary>A load case in a sentence or two.</summary>
internal static class CaseWords
{
    /// <summary>Id of the case with nothing on the bridge, which moves nothing.</summary>
    private const string Empty = "dead";

    /// <summary>How mid-span moves and how hard the rope pulls. The case must have a shape.</summary>
    public static string Of(LoadCaseResult load, QuantityText words)
    {
        var pull = $"The greatest pull in one rope is {words.Force(load.Shape!.MaxTension)}.";
        if (load.RollsOver)
        {
            return $"IT ROLLS OVER: no position in which the deck stays upright was found. Drawn as if something held it. {pull}";
        }

        if (string.Equals(load.Id, Empty, StringComparison.Ordinal))
        {
            return pull;
        }

        var down = words.Size(Math.Abs(load.MoveDownMid));
        var still = string.Equals(down, words.Size(0), StringComparison.Ordinal);
        var move = still ? "Mid-span stays where it is"
            : load.MoveDownMid > 0 ? $"Mid-span goes down {down}"
            : $"Mid-span rises {down}";
        return $"{move}. {pull}";
    }
}
