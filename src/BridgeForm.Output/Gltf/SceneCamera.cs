using System.Text.Json;
using BridgeForm.Solids;

namespace BridgeForm.Output.Gltf;

/// <summary>A camera that shows the whole bridge from the right-hand side near A, a little above the guard.</summary>
internal static class SceneCamera
{
    /// <summary>Vertical angle of view, radians: that of a normal lens.</summary>
    private const double FieldOfView = 0.7;

    private const double Near = 0.05;

    // Sideways, up and back from the middle, as shares of the span: the bridge fills most of a landscape picture.
    private const double Sideways = 0.75;
    private const double Up = 0.25;
    private const double Back = 0.45;

    /// <summary>A small bridge needs room around it all the same, metres.</summary>
    private const double LeastDistance = 4;

    /// <summary>Writes the list of cameras.</summary>
    public static void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("cameras");
        json.WriteStartObject();
        json.WriteString("name", "whole bridge");
        json.WriteString("type", "perspective");
        json.WriteStartObject("perspective");
        json.WriteNumber("yfov", FieldOfView);
        json.WriteNumber("znear", Near);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>
    /// Where it stands: it looks along its own −Z, X to the right, level. The middle of a model without frames is the origin.
    /// </summary>
    public static Placement Placement(BridgeModel model)
    {
        var (first, last) = model.Frames.IsEmpty
            ? (Vector3d.Zero, Vector3d.Zero)
            : (model.Frames[0].Node, model.Frames[^1].Node);
        var middle = 0.5 * (first + last);
        var reach = Math.Max(LeastDistance, (last - first).Length);
        var eye = middle + (reach * new Vector3d(-Back, Up, Sideways));
        var z = (eye - middle).Normalized();
        var x = Vector3d.UnitY.Cross(z).Normalized();
        return new Placement(eye, x, z.Cross(x), z);
    }
}

/// <summary>A rotation as glTF holds it: a unit quaternion (x, y, z, w).</summary>
internal readonly record struct Rotation(double X, double Y, double Z, double W)
{
    /// <summary>
    /// The rotation that turns the world's axes into those of a placement. Of the four possible formulas the one with the
    /// largest divisor is taken (S. W. Shepperd, 1978, from memory).
    /// </summary>
    public static Rotation Of(Placement p)
    {
        var (xx, yy, zz) = (p.X.X, p.Y.Y, p.Z.Z);
        if (xx + yy + zz > 0)
        {
            var s = 2 * Math.Sqrt(1 + xx + yy + zz);
            return new((p.Y.Z - p.Z.Y) / s, (p.Z.X - p.X.Z) / s, (p.X.Y - p.Y.X) / s, s / 4);
        }

        if (xx > yy && xx > zz)
        {
            var s = 2 * Math.Sqrt(1 + xx - yy - zz);
            return new(s / 4, (p.X.Y + p.Y.X) / s, (p.Z.X + p.X.Z) / s, (p.Y.Z - p.Z.Y) / s);
        }

        if (yy > zz)
        {
            var s = 2 * Math.Sqrt(1 + yy - xx - zz);
            return new((p.X.Y + p.Y.X) / s, s / 4, (p.Y.Z + p.Z.Y) / s, (p.Z.X - p.X.Z) / s);
        }

        var t = 2 * Math.Sqrt(1 + zz - xx - yy);
        return new((p.Z.X + p.X.Z) / t, (p.Y.Z + p.Z.Y) / t, t / 4, (p.X.Y - p.Y.X) / t);
    }
}
