using System.Collections.Immutable;
using System.Globalization;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Dxf;

/// <summary>The dimensions of a file, each with the block that holds its look.</summary>
/// <param name="Blocks">In order of the entities.</param>
/// <param name="NextHandle">The first handle that nothing has.</param>
internal sealed record DxfDimensions(ImmutableArray<DimensionBlock> Blocks, int NextHandle)
{
    /// <summary>Gives each dimension a block and handles from <paramref name="first"/> on.</summary>
    public static DxfDimensions Number(IEnumerable<SheetEntity> entities, int first)
    {
        var blocks = ImmutableArray.CreateBuilder<DimensionBlock>();
        foreach (var dimension in entities.OfType<SheetDimension>())
        {
            var block = new DimensionBlock(
                dimension, "*D" + (blocks.Count + 1).ToString(CultureInfo.InvariantCulture), first, DimensionLines.Draw(dimension));
            blocks.Add(block);
            first += DimensionBlock.OwnHandles + block.Parts.Length;
        }

        return new DxfDimensions(blocks.ToImmutable(), first);
    }
}

/// <summary>A dimension and its look.</summary>
/// <param name="Dimension">What is measured.</param>
/// <param name="Name">Name of the block.</param>
/// <param name="Handle">Handle of the block's record; beginning, end and parts follow.</param>
/// <param name="Parts">Its lines and its text.</param>
internal sealed record DimensionBlock(SheetDimension Dimension, string Name, int Handle, ImmutableArray<SheetEntity> Parts)
{
    /// <summary>Handles of record, beginning and end.</summary>
    public const int OwnHandles = 3;

    /// <summary>Where the dimension line ends that runs beside the second point: the foot of that point on the line.</summary>
    public SheetPoint LineEnd
    {
        get
        {
            var (from, to, line) = (Dimension.From, Dimension.To, Dimension.Line);
            var length = Dimensions.Distance(from, to);
            var (ux, uy) = length > 0 ? ((to.X - from.X) / length, (to.Y - from.Y) / length) : (1, 0);
            var across = ((line.Y - from.Y) * ux) - ((line.X - from.X) * uy);
            return new SheetPoint(to.X - (across * uy), to.Y + (across * ux));
        }
    }

    /// <summary>Middle of the text.</summary>
    public SheetPoint TextMiddle
    {
        get
        {
            var text = Parts.OfType<SheetText>().Single();
            return new SheetPoint(text.At.X + (text.Width / 2), text.At.Y + (text.Height / 2));
        }
    }
}
