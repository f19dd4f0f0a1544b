namespace BridgeForm.Checks.Timber;

/// <summary>Moment or shear of a base at one place in one case.</summary>
/// <param name="Case">Its loads.</param>
/// <param name="Stretch">What is left of the base there.</param>
/// <param name="At">From the middle, metres.</param>
/// <param name="Value">Newton metres or newtons.</param>
/// <param name="BottomTension">The bottom is in tension somewhere in the stretch; only where it is asked for.</param>
internal sealed record BaseEffect(BaseCase Case, BaseStretch Stretch, double At, double Value, bool BottomTension = false);
