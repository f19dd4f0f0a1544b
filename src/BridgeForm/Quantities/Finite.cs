namespace BridgeForm.Quantities;

/// <summary>The gate that no infinite number and no NaN passes on its way to a check, a text or a page.</summary>
public static class Finite
{
    /// <summary>The number itself. Throws where it is none: a defect that must not be printed.</summary>
    /// <exception cref="NotFiniteNumberException">It is infinite or not a number.</exception>
    public static double Of(double value) => double.IsFinite(value)
        ? value
        : throw new NotFiniteNumberException("A number without a finite value was to be written.", value);

    /// <summary>The number, or null where it is infinite or not a number.</summary>
    public static double? OrNull(double? value) => value is { } number && double.IsFinite(number) ? number : null;
}
