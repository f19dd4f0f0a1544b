using BridgeForm.Cli.Streams;
using BridgeForm.Output.Drawing;
using BridgeForm.Tests.Output.Preview;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Architecture;

/// <summary>Every namespace uses only those below it, by the types that the compiled program uses.</summary>
public sealed class LayerTests
{
    private static readonly Lazy<IReadOnlyCollection<TypeUse>> s_uses = new(() => TypeUses.In(
        typeof(Bridge).Assembly.Location, typeof(Sheet).Assembly.Location, typeof(ExitCode).Assembly.Location));

    [Fact]
    public void Nothing_climbs() => Assert.Empty(Layers.Faults(s_uses.Value));

    [Fact]
    public void Every_room_is_lived_in() =>
        Assert.Empty(
            Layers.All.SelectMany(l => l.Rooms).Except(
                s_uses.Value.SelectMany(u => (string[])[u.From.Namespace, u.To.Namespace]), StringComparer.Ordinal));

    /// <summary>A use of each kind that this test's own types make is found.</summary>
    [Fact]
    public void Uses_in_bodies_arguments_and_members_are_seen()
    {
        var uses = TypeUses.In(typeof(LayerTests).Assembly.Location)
            .Where(u => u.From.Name == nameof(Climber)).Select(u => u.To.Name).Order(StringComparer.Ordinal);
        Assert.Equal([nameof(InArgument), nameof(InBody), nameof(InField), nameof(InGeneric)], uses);
    }

    [Fact]
    public void A_use_of_a_higher_floor_is_told_with_both_types()
    {
        var low = new UsedType("BridgeForm.Quantities", "Low");
        var high = new UsedType("BridgeForm.Checks.Codes", "High");
        Assert.Equal(
            ["BridgeForm.Quantities.Low → BridgeForm.Checks.Codes.High"], Layers.Faults([new TypeUse(low, high), new TypeUse(high, low)]));
        Assert.Equal(["BridgeForm.Attic stands on no floor"], Layers.Faults([new TypeUse(new UsedType("BridgeForm.Attic", "Odd"), low)]));
    }

    [Fact]
    public void The_figure_shows_the_floors()
    {
        var path = Path.Combine(Tool.Repository, "docs", "figures", "layers.svg");
        var svg = LayerFigure.Svg(s_uses.Value);
        if (Sample.Updating)
        {
            File.WriteAllText(path, svg);
        }

        Assert.Equal(svg, File.ReadAllText(path));
    }
}

/// <summary>Uses one type in each way that a type can be used.</summary>
internal sealed class Climber(InField field)
{
    private readonly InField _field = field;

    public bool Uses() => _field is not null && Body(null);

    private static bool Body(InArgument? argument)
    {
        object body = new InBody();
        return body != argument as object && new List<InGeneric>().Count == 0;
    }
}

internal sealed class InField;

internal sealed class InArgument;

internal sealed class InBody;

internal sealed class InGeneric;
