using BridgeForm.Project.Definition;
using BridgeForm.Project.Reading;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;

namespace BridgeForm.Project;

/// <summary>The model to print. Metres, as they come out of the printer.</summary>
public sealed record PrintParameters
{
    /// <summary>Size of the model by that of the bridge, 0.05 for 1:20; null where the file leaves it to <see cref="PrintFit"/>.</summary>
    public double? Scale { get; init; }

    /// <summary>Width of the bed.</summary>
    public required double BedWidth { get; init; }

    /// <summary>Depth of the bed.</summary>
    public required double BedDepth { get; init; }

    /// <summary>Nothing is printed thinner.</summary>
    public required double Thinnest { get; init; }
}

/// <summary>Keys under <c>shop.print</c>, how they are read, what they must agree on.</summary>
internal static class PrintSection
{
    private const string Path = "shop.print";
    private const string ScaleKey = Path + ".scale";
    private const string BedKey = Path + ".bed";
    private const string ThinnestKey = Path + ".thinnest";
    private const double SmallestBed = 0.08;
    private const double LargestBed = 2;

    // A common bed, and three lines of a nozzle of 0.4 mm. Common practice, no source.
    private const string UsualBed = "220 x 220 mm";

    public static KeySpec Keys => Define.Map(
        "print",
        "The model to print, scale-model.3mf",
        [
            Define.Quantity(QuantityKind.Share, "scale", "Model to bridge", "1:100", "1:1") with
            {
                DefaultNote = "1:20, or the next of 1:25, 1:32, 1:50, 1:75 and 1:100 at which a frame fits the bed",
                Example = "1:20",
                Wanted = "a scale; write one such as 1:20",
            },
            Define.Text("bed", "Width and depth of the printer's bed, 80 mm to 2 m", UsualBed),
            Define.Length("thinnest", "Parts that would be thinner are printed as thick", "0.2 mm", "10 mm", "1.2 mm"),
        ]);

    public static PrintParameters Read(FileValues v)
    {
        var (width, depth) = Bed(v.Text(BedKey)) ?? Bed(UsualBed)!.Value;
        return new PrintParameters
        {
            Scale = v.NumberOrNull(ScaleKey),
            BedWidth = width,
            BedDepth = depth,
            Thinnest = v.Number(ThinnestKey),
        };
    }

    /// <summary>A bed that can be read, a frame that fits it, parts that stay in proportion. Nothing is told of what is left out.</summary>
    public static void Check(CheckedFile f)
    {
        if (f.Good(BedKey) && Bed(f.Values.Text(BedKey)) is null)
        {
            f.Stop(FaultCode.PrintBed, BedKey, $"bed: {QuantityReader.Quote(f.Written(BedKey))} is no size of a bed; write width and "
                + $"depth, each 80 mm to 2 m, such as {UsualBed}");
            return;
        }

        if (f.Good(ScaleKey, BedKey, ThinnestKey) && (f.Values.Given(ScaleKey) || f.Values.Given(BedKey)))
        {
            Room(f);
        }

        if (f.Good(ScaleKey, ThinnestKey) && (f.Values.Given(ScaleKey) || f.Values.Given(ThinnestKey)))
        {
            Thickness(f);
        }
    }

    private static void Room(CheckedFile f)
    {
        if (!f.Good("frames.base.length", "frames.post.length", "frames.spacing"))
        {
            return;
        }

        var most = PrintFit.LargestScale(f.Parameters);
        if (PrintFit.Scale(f.Parameters) <= most * (1 + Tolerances.Bound))
        {
            return;
        }

        var (width, height) = PrintFit.Frame(f.Parameters);
        var scale = PrintFit.Scale(f.Parameters);
        f.Stop(FaultCode.PrintTooLarge, ScaleKey, $"scale: at {Ratio(scale)} a frame is {Millimetres(width * scale)} x "
            + $"{Millimetres(height * scale)} mm and a bay up to {Millimetres(PrintFit.Bay(f.Parameters) * scale)} mm long, more "
            + $"than a bed of '{f.Written(BedKey)}' takes, {Millimetres(PrintFit.Margin)} mm free at each edge; write at most "
            + $"{RatioAtMost(most)}, or a larger bed", BedKey);
    }

    private static void Thickness(CheckedFile f)
    {
        var scale = PrintFit.Scale(f.Parameters);
        var (part, thickness) = PrintFit.Thinnest(f.Parameters);
        var printed = f.Parameters.Shop.Print.Thinnest;
        if (printed <= PrintFit.MostGrowth * thickness * scale * (1 + Tolerances.Bound))
        {
            return;
        }

        f.Stop(FaultCode.PrintTooThick, ThinnestKey, $"thinnest: at {Ratio(scale)} the {part} is {Tenths(thickness * scale)} mm thick, and "
            + $"would be printed more than twice as thick, {Tenths(printed)} mm; write thinnest: at most "
            + $"{Tenths(Rounding.Down(PrintFit.MostGrowth * thickness * scale, Rounding.Millimetre / 10))} mm, or a scale of at least "
            + $"{RatioAtLeast(printed / (PrintFit.MostGrowth * thickness))}", ScaleKey);
    }

    // "220 x 220 mm": a unit at the end is that of both.
    private static (double Width, double Depth)? Bed(string text)
    {
        var sides = text.Split('x', '\u00d7');
        if (sides.Length != 2)
        {
            return null;
        }

        var unit = new string([.. sides[1].Reverse().TakeWhile(c => char.IsLetter(c) || c is ' ' or '"' or '\'').Reverse()]);
        var (width, depth) = (Side(sides[0]) ?? Side(sides[0] + unit), Side(sides[1]));
        return width is { } w && depth is { } d ? (w, d) : null;
    }

    private static double? Side(string text) =>
        QuantityReader.Read(QuantityKind.Length, text) is { IsRead: true, Value: >= SmallestBed and <= LargestBed } reading
            ? reading.Value
            : null;

    private static string Ratio(double scale) => "1:" + NumberText.Rounded(1 / scale, 1);

    private static string RatioAtMost(double scale) => "1:" + NumberText.Rounded(Math.Ceiling((1 / scale) - Tolerances.RoundOff), 0);

    private static string RatioAtLeast(double scale) =>
        "1:" + NumberText.Rounded(Math.Max(1, Math.Floor((1 / scale) + Tolerances.RoundOff)), 0);

    private static string Millimetres(double metres) => NumberText.Rounded(metres / Rounding.Millimetre, 0);

    private static string Tenths(double metres) => NumberText.Rounded(metres / Rounding.Millimetre, 1);
}
