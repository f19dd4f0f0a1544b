using BridgeForm.Output.Gltf;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Quantities;
using BridgeForm.Solids;

namespace BridgeForm.Output.ScaleModel;

/// <summary>A part of the bridge on its way to the bed: grown where it is too thin, joined to what it comes out with.</summary>
internal sealed record PrintPart
{
    /// <summary>How it is printed.</summary>
    public required PrintRules Rules { get; init; }

    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Of <see cref="PrintMaterials"/>.</summary>
    public required int Material { get; init; }

    /// <summary>The part as it is on the bridge, in its own axes.</summary>
    public required Solid Whole { get; init; }

    /// <summary>The stick as it is printed, in its own axes.</summary>
    public required CutStock Stock { get; init; }

    /// <summary>Where its axes lie.</summary>
    public required Placement Place { get; init; }

    private string Thicker { get; init; } = "";

    private bool IsChanged { get; init; }

    /// <summary>A part as it stands, without the holes that no printer makes.</summary>
    public static PrintPart Of(BridgeParameters parameters, PrintRules rules, Piece piece, Occurrence at)
    {
        var kept = piece.Shape.Holes.Where(h => h.Diameter >= rules.Thinnest).ToList();
        return new PrintPart
        {
            Rules = rules,
            Id = at.Id,
            Material = GltfMaterials.Of(piece, parameters),
            Whole = piece.Solid,
            Stock = piece.Shape with { Holes = [.. kept] },
            Place = at.Placement,
            IsChanged = kept.Count < piece.Shape.Holes.Length,
        };
    }

    /// <summary>Along which of its own axes Y and Z, and which way along it, a direction of the world points most.</summary>
    public Vector3d Face(Vector3d way)
    {
        var local = Place.DirectionToLocal(way);
        return Math.Abs(local.Y) > Math.Abs(local.Z) ? Math.Sign(local.Y) * Vector3d.UnitY : Math.Sign(local.Z) * Vector3d.UnitZ;
    }

    /// <summary>Size along one of its own axes Y or Z, metres.</summary>
    public double Size(Vector3d face) => Math.Abs(face.Y) > 0 ? Stock.Width : Stock.Thickness;

    /// <summary>Thick enough along the axis that points most in a direction, grown that way alone.</summary>
    public PrintPart ThickEnough(Vector3d way)
    {
        var size = Size(Face(way));
        var by = Rules.Lacking(size);
        return by <= 0 ? this : Grown(way, by) with { Thicker = Told(Thicker, size, size + by, "") };
    }

    /// <summary>
    /// Thick enough along both axes across it: the one that points most in a direction grows that way, the other both ways.
    /// </summary>
    public PrintPart ThickEnoughBothWays(Vector3d way)
    {
        if (Stock.IsRound)
        {
            return Rules.Lacking(Stock.Width) is > 0 and var by
                ? this with
                {
                    Stock = RoundStock.Cut(Stock.Width + by, Stock.Near, Stock.Far),
                    Thicker = Told(Thicker, Stock.Width, Stock.Width + by, ""),
                    IsChanged = true,
                }
                : this;
        }

        var first = ThickEnough(way);
        var side = first.Place.DirectionToWorld(first.Face(way)).Cross(first.Place.X);
        var (size, lacking) = (first.Size(first.Face(side)), first.Rules.Lacking(first.Size(first.Face(side))));
        return lacking <= 0
            ? first
            : first.Grown(side, lacking / 2).Grown(-side, lacking / 2) with { Thicker = Told(first.Thicker, size, size + lacking, "") };
    }

    /// <summary>Grown down to the bed, so that it lies on it.</summary>
    public PrintPart DownTo(Vector3d way, double by)
    {
        var size = Size(Face(way));
        return by <= Tolerances.Corner ? this : Grown(way, by) with { Thicker = Told(Thicker, size, size + by, ", to lie flat") };
    }

    /// <summary>Moved, metres.</summary>
    public PrintPart Moved(Vector3d by) => this with { Place = Place with { Origin = Place.Origin + by } };

    /// <summary>Grown by so much on the face that looks most in a direction.</summary>
    public PrintPart Grown(Vector3d way, double by)
    {
        var face = Face(way);
        var shift = by / 2 * face;
        Plane Kept(Plane plane) => plane with { Offset = plane.Offset - plane.Normal.Dot(shift) };
        var onWidth = Math.Abs(face.Y) > 0;
        return this with
        {
            IsChanged = true,
            Place = Place with { Origin = Place.ToWorld(shift) },
            Stock = Stock with
            {
                Width = Stock.Width + (onWidth ? by : 0),
                Thickness = Stock.Thickness + (onWidth ? 0 : by),
                Near = Kept(Stock.Near),
                Far = Kept(Stock.Far),
                Rips = [.. Stock.Rips.Select(r => Kept(r).Shifted(Math.Max(0, r.Normal.Dot(face)) * by))],
                Channels = [.. Stock.Channels.Select(c => Deepened(c, face, by))],
                Holes = [.. Stock.Holes.Select(h => h with { Across = h.Across - Across(h.Face, shift) })],
            },
        };
    }

    /// <summary>Without what lies above a plane of the world.</summary>
    public PrintPart Ripped(Plane plane) => this with
    {
        IsChanged = true,
        Stock = Stock with { Rips = [.. Stock.Rips, Place.ToLocal(plane)] },
    };

    /// <summary>Its ends run on into what they bear on.</summary>
    public PrintPart Joined(bool near, bool far) => this with
    {
        IsChanged = true,
        Stock = Stock with
        {
            Near = near ? Stock.Near.Shifted(Rules.Join) : Stock.Near,
            Far = far ? Stock.Far.Shifted(Rules.Join) : Stock.Far,
        },
    };

    /// <summary>Its channels at least so wide.</summary>
    public PrintPart Channelled(double width) => this with
    {
        IsChanged = IsChanged || Stock.Channels.Any(c => c.Width < width),
        Stock = Stock with { Channels = [.. Stock.Channels.Select(c => c with { Width = Math.Max(c.Width, width) })] },
    };

    /// <summary>What is printed.</summary>
    public PrintBody Body()
    {
        var solid = IsChanged ? Stock.ToSolid().OrNull ?? Whole : Whole;
        return PrintBody.Of(Id, Material, solid, Place) with { IsExact = !IsChanged, Thicker = Thicker };
    }

    /// <summary>Its corners in the world.</summary>
    public IEnumerable<Vector3d> Points() => Body().Points;

    // A channel's floor stays where it is. Its depth is that in the middle of the stick, which moves where the stick grows across it.
    private static Channel Deepened(Channel channel, Vector3d face, double by) => channel with
    {
        Depth = channel.Depth + (Inward(channel.Face).Dot(face) < 0 ? by : channel.FloorSlope * Across(channel.Face, by / 2 * face)),
    };

    private static Vector3d Inward(StockFace face) => face switch
    {
        StockFace.MinusY => Vector3d.UnitY,
        StockFace.PlusY => -Vector3d.UnitY,
        StockFace.MinusZ => Vector3d.UnitZ,
        _ => -Vector3d.UnitZ,
    };

    private static double Across(StockFace face, Vector3d v) => face is StockFace.MinusY or StockFace.PlusY ? v.Z : v.Y;

    private string Told(string before, double from, double to, string why) =>
        (before.Length == 0 ? "" : before + "; ") + $"{Rules.Printed(from)} mm printed {Rules.Printed(to)} mm{why}";
}
