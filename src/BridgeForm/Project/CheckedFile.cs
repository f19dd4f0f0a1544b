using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>A file's values and parameters, and where to tell what is wrong with them.</summary>
internal sealed record CheckedFile(FileValues Values, BridgeParameters Parameters, FaultList Faults)
{
    private const double ShareStep = 1e-4;

    /// <summary>Whether all of these were read without a fault.</summary>
    public bool Good(params ReadOnlySpan<string> paths) => Values.Good(paths);

    /// <summary>
    /// Tells a fault at a value. When the file leaves that one out, the fault lies in what it was given instead: the first
    /// of <paramref name="others"/> that stands in the file, else the mapping above the value.
    /// </summary>
    public void Stop(FaultCode code, string path, string message, params ReadOnlySpan<string> others)
    {
        var place = path;
        foreach (var other in others)
        {
            place = Values.Given(place) || !Values.Given(other) ? place : other;
        }

        Faults.Add(code, Values.Place(place), message);
    }

    /// <summary>A long length in the file's units: feet and inches, or millimetres.</summary>
    public string Length(double metres) => new QuantityText(Parameters.Units).Length(metres);

    /// <summary>A size in the file's units: inches, or millimetres.</summary>
    public string Size(double metres) => new QuantityText(Parameters.Units).Size(metres);

    /// <summary>A long least length, rounded up to what can be measured.</summary>
    public string LongAtLeast(double metres) => Length(Rounding.Up(metres, LongStep));

    /// <summary>A long largest length, rounded down to what can be measured.</summary>
    public string LongAtMost(double metres) => Length(Rounding.Down(metres, LongStep));

    /// <summary>A largest share, rounded down to 0.01 %.</summary>
    public static string ShareAtMost(double share) => QuantityText.Share(Rounding.Down(share, ShareStep));

    /// <summary>A least length, rounded up to what can be measured.</summary>
    public string AtLeast(double metres) => Size(Up(metres));

    /// <summary>A largest length, rounded down to what can be measured.</summary>
    public string AtMost(double metres) => Size(Down(metres));

    /// <summary>The least length that can be measured and is not below another, metres.</summary>
    public double Up(double metres) => Rounding.Up(metres, Step);

    /// <summary>The largest length that can be measured and is not above another, metres.</summary>
    public double Down(double metres) => Rounding.Down(metres, Step);

    /// <summary>A value as written in the file, or as its default is written.</summary>
    public string Written(string path) => Values.Find(path)?.Text ?? "";

    // What is printed of a long length: 1/16 in or 0.1 mm.
    private double LongStep => Parameters.Units == UnitSystem.Imperial ? Rounding.Sixteenth : Rounding.Millimetre / 10;

    private double Step => Rounding.Step(Parameters.Units);
}
