namespace BridgeForm.Ropes;

/// <summary>
/// What one bay of a hanging rope resists when its ends move apart, in the rope's plane: the inverse of its flexibility,
/// with what a backstay behind its support gives. N/m; x along the bridge, drop down.
/// </summary>
/// <param name="Xx">Level force per level move.</param>
/// <param name="Xd">Level force per drop, and down per level move.</param>
/// <param name="Dd">Force down per drop.</param>
internal readonly record struct BayStiffness(double Xx, double Xd, double Dd)
{
    /// <summary>Of every bay of a shape.</summary>
    /// <param name="rope">What the shape was found for: its backstays count in the first and last bay.</param>
    /// <param name="shape">The shape.</param>
    public static BayStiffness[] Find(LoadCaseRequest rope, RopeShape shape)
    {
        var all = new BayStiffness[shape.Segments.Length];
        for (var bay = 0; bay < all.Length; bay++)
        {
            all[bay] = Find(rope, shape, bay);
        }

        return all;
    }

    private static BayStiffness Find(LoadCaseRequest rope, RopeShape shape, int bay)
    {
        var segment = shape.Segments[bay];
        var piece = new ElasticCatenary(
            segment.Horizontal, segment.VerticalA, segment.UnstressedLength, shape.WeightPerLength, shape.AxialStiffness);
        var (xh, xv, dh, dv) = (piece.XByHorizontal, piece.XByVertical, piece.XByVertical, piece.DropByVertical);
        if (bay == 0)
        {
            Fed(FedAtA(rope, segment));

            // The node's own force on it is what is left of V beyond the rope that was fed in.
            if (rope.BackstayA is { } a)
            {
                var fed = new FedBay(rope.UnstressedLengths[0], (0, 0), false)
                    .FedFromStart(a, segment.Horizontal, segment.VerticalA, rope.AxialStiffness).Rates;
                var left = 1 - (rope.WeightPerLength * fed.V);
                (xh, dh) = (xh + (xv * rope.WeightPerLength * fed.H / left), dh + (dv * rope.WeightPerLength * fed.H / left));
                (xv, dv) = (xv / left, dv / left);
            }

            xh += rope.HeldA?.Give(segment.Horizontal, rope.AxialStiffness).ByHorizontal ?? 0;
        }

        if (bay == shape.Segments.Length - 1)
        {
            Fed(FedAtB(rope, segment, bay));
            xh += rope.HeldB?.Give(segment.Horizontal, rope.AxialStiffness).ByHorizontal ?? 0;
        }

        var determinant = (xh * dv) - (xv * dh);
        return new BayStiffness(dv / determinant, -(xv + dh) / 2 / determinant, xh / determinant);

        void Fed((double H, double V) rates)
        {
            (xh, xv) = (xh + (piece.XByLength * rates.H), xv + (piece.XByLength * rates.V));
            (dh, dv) = (dh + (piece.DropByLength * rates.H), dv + (piece.DropByLength * rates.V));
        }
    }

    private static (double H, double V) FedAtA(LoadCaseRequest rope, RopeSegment segment) => rope.BackstayA is { } a
        ? new FedBay(rope.UnstressedLengths[0], (0, 0), false)
            .FedFromStart(a, segment.Horizontal, segment.VerticalA, rope.AxialStiffness).Rates
        : (0, 0);

    private static (double H, double V) FedAtB(LoadCaseRequest rope, RopeSegment segment, int bay) => rope.BackstayB is { } b
        ? new FedBay(rope.UnstressedLengths[bay], (0, 0), false)
            .FedFromEnd(b, segment.Horizontal, (segment.VerticalA, (0, 1)), rope).Rates
        : (0, 0);
}
