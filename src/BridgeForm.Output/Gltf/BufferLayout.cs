using System.Collections.Immutable;

namespace BridgeForm.Output.Gltf;

/// <summary>Order of the parts of the buffer; parts without bytes have no view. Two-byte indices come last, so that all else is aligned to four.</summary>
/// <param name="Parts">Bytes of each buffer view, and whether they are vertices.</param>
/// <param name="Positions">Index of the view of positions.</param>
/// <param name="Normals">Index of the view of normals.</param>
/// <param name="WideIndices">Index of the view of four-byte indices, when there are any.</param>
/// <param name="NarrowIndices">Index of the view of two-byte indices, when there are any.</param>
internal sealed record BufferLayout(
    ImmutableArray<(ByteChunks Bytes, bool IsVertices)> Parts, int Positions, int Normals, int WideIndices, int NarrowIndices)
{
    /// <summary>The layout of a store.</summary>
    public static BufferLayout Of(MeshStore store)
    {
        var wide = store.WideIndices.Length > 0;
        var all = ImmutableArray.Create(
            (store.Positions, true), (store.Normals, true), (store.WideIndices, false), (store.NarrowIndices, false));
        return new BufferLayout([.. all.Where(p => p.Item1.Length > 0)], 0, 1, 2, wide ? 3 : 2);
    }
}
