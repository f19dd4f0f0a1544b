using System.Diagnostics.CodeAnalysis;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Ropes;
using BridgeForm.Trials;

namespace BridgeForm;

/// <summary>Parameters → rope shape → frames → members → pieces → contacts and checks → model: the whole pipe, once.</summary>
public static class Bridge
{
    /// <summary>Builds the whole model, or says why it cannot be built.</summary>
    public static bool TryBuild(
        BridgeParameters parameters,
        [NotNullWhen(true)] out BridgeModel? model,
        [NotNullWhen(false)] out BridgeFault? fault) => new Rebuild().TryWhole(parameters, CancellationToken.None, out model, out fault);

    /// <summary>Shape of the ropes and weights of the members, found together.</summary>
    public static bool TryShape(
        BridgeParameters parameters, [NotNullWhen(true)] out RopeShape? rope, [NotNullWhen(false)] out BridgeFault? fault) =>
        (rope = ShapeFinding.Of(parameters, CancellationToken.None, out fault)) is not null;

    /// <summary>The shape and everything that lies on it, when every part of it is one.</summary>
    internal static bool TryLayout(
        BridgeParameters parameters,
        [NotNullWhen(true)] out RopeShape? rope,
        [NotNullWhen(true)] out BridgeLayout? layout,
        [NotNullWhen(false)] out BridgeFault? fault)
    {
        rope = ShapeFinding.Of(parameters, CancellationToken.None, out var none);
        (layout, fault) = Rebuild.Laid(parameters, rope, none, CancellationToken.None);
        return fault is null && rope is not null && layout is not null;
    }

    /// <summary>The shape of a trial design; null where it has none, or none within its effort.</summary>
    internal static RopeShape? ShapeWithin(BridgeParameters parameters, Effort effort, double? accuracy) =>
        ShapeFinding.Within(parameters, effort, accuracy);
}
