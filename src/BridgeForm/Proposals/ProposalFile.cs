using BridgeForm.Project.Editing;

namespace BridgeForm.Proposals;

/// <summary>A proposal written into the text of a project file.</summary>
public static class ProposalFile
{
    private const int CommentWidth = 120;

    /// <summary>The file with what a proposal writes otherwise, each with its reason; everything else byte for byte as it was.</summary>
    /// <param name="text">The file that the proposal was found for.</param>
    /// <param name="proposal">The proposal.</param>
    /// <exception cref="InvalidOperationException">A value could not be written: a defect.</exception>
    public static string Written(string text, Proposal proposal) => proposal.Changes.Aggregate(
        text, (now, change) => Set(now, change.Path, change.After, Short(change.Reason)));

    /// <summary>The file with one value, and a remark beside it.</summary>
    internal static string Set(string text, string path, string value, string remark) =>
        FileEdit.Set(text, path, value, remark) is var edit && edit.Text is { } done
            ? done
            : throw new InvalidOperationException($"{path} could not be written: {edit.Problem}");

    // A remark beside a value: the reason's first part, to the end of a word.
    private static string Short(string reason)
    {
        var part = reason.Split(';')[0];
        return part.Length <= CommentWidth ? part : part[..part.LastIndexOf(' ', CommentWidth)] + " …";
    }
}
