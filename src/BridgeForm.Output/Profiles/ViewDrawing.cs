using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Profiles;

/// <summary>One view of a piece at its place on the page, and the labels that belong below it.</summary>
internal sealed record ViewDrawing(ImmutableArray<SheetEntity> Entities, ImmutableArray<Label> Labels)
{
    /// <summary>The smallest box around everything drawn.</summary>
    public SheetBox Box => Entities.Aggregate(SheetBox.Empty, (box, e) => box.Union(EntityBox.Of(e)));
}
