namespace BridgeForm.Checks.Timber;

/// <summary>One thing that a joint can fail by, under one load.</summary>
/// <param name="Ratio">Demand over what is allowed.</param>
/// <param name="Text">The numbers, for a pocket calculator; put into words only where somebody reads them.</param>
/// <param name="Source">Of the rule.</param>
internal sealed record JointLimit(double Ratio, Func<string> Text, string Source);
