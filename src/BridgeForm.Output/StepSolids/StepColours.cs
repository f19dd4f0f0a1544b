using BridgeForm.Output.Gltf;
using BridgeForm.Output.Part21;

namespace BridgeForm.Output.StepSolids;

/// <summary>Colours of bodies: those of the model's first finish, as a screen shows them.</summary>
internal sealed class StepColours(Part21File file)
{
    private readonly Dictionary<int, Ref> _styles = [];

    /// <summary>Gives a body the colour of a material of <see cref="GltfMaterials"/>.</summary>
    public Ref Give(Ref solid, int material)
    {
        if (!_styles.TryGetValue(material, out var style))
        {
            _styles[material] = style = Style(GltfMaterials.All[material]);
        }

        return file.Add($"STYLED_ITEM('',({style}),{solid})");
    }

    private Ref Style(GltfMaterial material)
    {
        var shown = ScreenColour.Of(material);
        var colour = file.Add($"COLOUR_RGB({material.Name},{shown.Red},{shown.Green},{shown.Blue})");
        var fill = file.Add($"FILL_AREA_STYLE('',({file.Add($"FILL_AREA_STYLE_COLOUR('',{colour})")}))");
        List<Ref> sides = [file.Add($"SURFACE_STYLE_FILL_AREA({fill})")];
        if (material.Opacity < 1)
        {
            var through = file.Add($"SURFACE_STYLE_TRANSPARENT({1 - material.Opacity})");
            sides.Add(file.Add($"SURFACE_STYLE_RENDERING_WITH_PROPERTIES(.NORMAL_SHADING.,{colour},({through}))"));
        }

        var side = file.Add($"SURFACE_SIDE_STYLE('',{sides})");
        return file.Add($"PRESENTATION_STYLE_ASSIGNMENT(({file.Add($"SURFACE_STYLE_USAGE(.BOTH.,{side})")}))");
    }
}
