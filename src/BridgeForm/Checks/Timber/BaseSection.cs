namespace BridgeForm.Checks;

/// <summary>Full section of a base and what the channel leaves of it. Metres.</summary>
/// <param name="Full">Breadth along the bridge, depth square to the deck.</param>
/// <param name="Notch">Deepest channel of the interior bases, at its deep mouth.</param>
/// <param name="Channel">Channel's inner and outer wall, z of the right one.</param>
internal readonly record struct BaseSection(RectangularSection Full, double Notch, (double Inner, double Outer) Channel)
{
    /// <summary>Net section: the full breadth, what is left of the depth.</summary>
    public RectangularSection Net => Full with { Depth = Full.Depth - Notch };

    /// <summary>Of the interior bases.</summary>
    public static BaseSection Of(CheckContext context)
    {
        var parameters = context.Parameters;
        var made = parameters.Frames.Base;
        var notch = 0.0;
        for (var i = 1; i < context.Layout.Bays; i++)
        {
            var levels = context.Layout.Levels[i];
            notch = Math.Max(notch, levels.ChannelDepth + (made.Along / 2 * Math.Abs(levels.FloorSlope)));
        }

        var (axis, half) = (parameters.Ropes.Spacing / 2, parameters.Frames.Channel.Width / 2);
        return new BaseSection(new(made.Along, made.Depth), notch, (axis - half, axis + half));
    }

    /// <summary>The two channels, left first.</summary>
    public IEnumerable<(double From, double To)> Channels => [(-Channel.Outer, -Channel.Inner), (Channel.Inner, Channel.Outer)];

    /// <summary>Stretches of the base that no channel weakens.</summary>
    public IEnumerable<(double From, double To)> Between(double half) =>
        [(-half, -Channel.Outer), (-Channel.Inner, Channel.Inner), (Channel.Outer, half)];

    /// <summary>Fb' of a section of the base with beam stability over its whole length; null without values.</summary>
    public static AdjustedValue? Bending(CheckContext context, RectangularSection section, LoadDuration load)
    {
        var made = context.Parameters.Frames.Base;
        if (LumberValues.Find(context.Parameters, made.Stock, made.Section) is not { } values)
        {
            return null;
        }

        var stability = Stability.Beam(
            section, made.Length, cantilever: false, values.Bending(load, flat: false).Value, values.ModulusMin().Value);
        return values.Bending(load, made.Flat).Times(stability);
    }

    /// <summary>Fv' of the base; null without values.</summary>
    public static AdjustedValue? Shear(CheckContext context, LoadDuration load) =>
        LumberValues.Find(context.Parameters, context.Parameters.Frames.Base.Stock, context.Parameters.Frames.Base.Section)?.Shear(load);

    /// <summary>Why there are no values.</summary>
    public static string Missing(CheckContext context) =>
        LumberValues.Missing(context.Parameters, context.Parameters.Frames.Base.Stock, context.Parameters.Frames.Base.Section);
}
