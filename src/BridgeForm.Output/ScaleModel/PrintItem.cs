using System.Collections.Immutable;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>What lies on a plate together; the order is that of the plates.</summary>
internal enum PrintKind
{
    /// <summary>Frames.</summary>
    Frame,

    /// <summary>Decks of bays.</summary>
    Deck,

    /// <summary>Guards of bays, one a side.</summary>
    Guard,

    /// <summary>Loose sticks and ropes.</summary>
    Stick,

    /// <summary>What the bridge stands on.</summary>
    Ground,
}

/// <summary>What comes off the bed in one piece: bodies that touch or run into each other.</summary>
/// <param name="Name">Such as <c>F03</c> or <c>B05 guard left</c>.</param>
/// <param name="Kind">With what it lies.</param>
/// <param name="Lying">Axes of the bed where the bridge's parts lie: Z is up from the bed.</param>
/// <param name="Bodies">At least one.</param>
internal sealed record PrintItem(string Name, PrintKind Kind, Placement Lying, ImmutableArray<PrintBody> Bodies)
{
    /// <summary>Its box on the bed before it is scaled, metres.</summary>
    public (Vector3d Low, Vector3d High) Box()
    {
        Vector3d low = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity), high = -low;
        foreach (var p in Bodies.SelectMany(b => b.Points).Select(Lying.ToLocal))
        {
            low = new(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        return (low, high);
    }

    /// <summary>A quarter turned on the bed.</summary>
    public PrintItem Turned() => this with { Lying = Lying with { X = Lying.Y, Y = -Lying.X } };
}
