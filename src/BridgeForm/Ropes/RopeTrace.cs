using System.Collections.Immutable;

namespace BridgeForm.Ropes;

/// <summary>Draws a rope out from support A once its two forces there and its unstressed lengths are known.</summary>
internal static class RopeTrace
{
    /// <summary>The shape: each segment follows from the one before; positions are summed with compensation.</summary>
    /// <param name="horizontal">H, newtons.</param>
    /// <param name="verticalA">V at support A, newtons.</param>
    /// <param name="lengths">Unstressed length of each bay, metres.</param>
    /// <param name="loads">Load at each node, newtons; read at interior nodes only.</param>
    /// <param name="weight">N per unstressed metre.</param>
    /// <param name="stiffness">EA, newtons.</param>
    public static RopeShape Shape(
        double horizontal,
        double verticalA,
        ImmutableArray<double> lengths,
        ImmutableArray<double> loads,
        double weight,
        double stiffness)
    {
        var nodes = ImmutableArray.CreateBuilder<RopePoint>(lengths.Length + 1);
        var segments = ImmutableArray.CreateBuilder<RopeSegment>(lengths.Length);
        var (x, y, vertical, largestTension) = (default(CompensatedSum), default(CompensatedSum), verticalA, 0.0);
        nodes.Add(default);
        for (var i = 0; i < lengths.Length; i++)
        {
            var piece = new ElasticCatenary(horizontal, vertical, lengths[i], weight, stiffness);
            segments.Add(new RopeSegment(lengths[i], piece.StretchedLength, horizontal, vertical));
            (x, y) = (x.Plus(piece.X), y.Plus(-piece.Drop));
            nodes.Add(new RopePoint(x.Value, y.Value));
            largestTension = Math.Max(largestTension, Math.Max(piece.TensionStart, piece.TensionEnd));
            vertical = piece.VerticalEnd - loads[i + 1];
        }

        var shape = new RopeShape
        {
            Nodes = nodes.MoveToImmutable(),
            Segments = segments.MoveToImmutable(),
            Loads = loads,
            WeightPerLength = weight,
            AxialStiffness = stiffness,
            Horizontal = horizontal,
            LargestTension = largestTension,
            Sag = 0,
        };
        return shape with { Sag = (y.Value / 2) - shape.HeightAt(x.Value / 2) };
    }
}

/// <summary>Kahan's sum: the error of a long sum stays that of one addition.</summary>
internal readonly record struct CompensatedSum(double Value, double Lost)
{
    /// <summary>The sum with one more term.</summary>
    public CompensatedSum Plus(double term)
    {
        var corrected = term - Lost;
        var sum = Value + corrected;
        return new CompensatedSum(sum, (sum - Value) - corrected);
    }
}
