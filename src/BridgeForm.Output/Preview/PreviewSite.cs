using System.Text.Json;
using BridgeForm.Frames;
using BridgeForm.Project;
using BridgeForm.Quantities;

namespace BridgeForm.Output.Preview;

/// <summary>What the bridge stands in: ground, water, landings.</summary>
internal static class PreviewSite
{
    /// <summary>Gap between landing and deck where the project names none, metres. Chosen for the picture, no source.</summary>
    private const double PicturedGap = 0.012;

    /// <summary>Writes <c>ground</c>, <c>water</c> and <c>landings</c>.</summary>
    public static void Write(Utf8JsonWriter json, BridgeModel model)
    {
        var site = model.Parameters.Site;
        PreviewJson.List(json, "ground", site.Ground, (j, p) => PreviewJson.Row(j, p.X, p.Y));
        if (site.Water is { } water)
        {
            PreviewJson.Number(json, "water", water);
        }
        else
        {
            json.WriteNull("water");
        }

        json.WriteStartArray("landings");
        var layout = BridgeLayout.Lay(model.Parameters, model.Rope);
        Landing(json, layout, 0, site.A);
        Landing(json, layout, layout.Bays, site.B);
        json.WriteEndArray();
    }

    /// <summary>Levels of a frame's base, along its up axis.</summary>
    public static BaseLevels Levels(FramePose pose, BridgeParameters parameters) =>
        BaseLevels.Find(parameters.Frames, parameters.Ropes.Rope.Radius, pose, parameters.Frames.Stance);

    private static void Landing(Utf8JsonWriter json, BridgeLayout layout, int frame, SupportParameters support)
    {
        var (end, outward) = (layout.Poses[frame], frame == 0 ? -1 : 1);
        json.WriteStartObject();
        PreviewJson.Number(json, "top", end.Node.Y + layout.Levels[frame].Bottom);
        PreviewJson.Number(json, "walk", support.LandingLevel is { } level ? end.Node.Y + level : DeckEnd.Surface(layout, frame));
        PreviewJson.Number(json, "gap", support.LandingGap ?? PicturedGap);
        if (support.Kind is { } kind)
        {
            json.WriteString("support", kind switch
            {
                SupportKind.Tree => "tree",
                SupportKind.Platform => "platform",
                SupportKind.Abutment => "abutment",
                _ => "post",
            });
        }

        PreviewJson.Number(json, "baseHalf", DeckEnd.Beyond(layout.Parameters));
        json.WritePropertyName("stay");
        if (support.Backstay is { } stay)
        {
            PreviewJson.Row(
                json,
                end.Node.X + (outward * stay.Length * Elementary.Cos(stay.Angle)),
                end.Node.Y - (stay.Length * Elementary.Sin(stay.Angle)));
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteEndObject();
    }
}
