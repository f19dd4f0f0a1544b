using BridgeForm.Frames;
using BridgeForm.Output.Part21;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Roles;

namespace BridgeForm.Output.Ifc;

/// <summary>Things of the model, and how they belong together. Nobody is named as their owner.</summary>
internal sealed class IfcParts(Part21File file, string bridge)
{
    private readonly Dictionary<string, Ref> _materials = [];

    /// <summary>Identifier of a thing by its path.</summary>
    public string Id(string path) => ModelPath.Identifier(bridge, path);

    /// <summary>One whole and its parts.</summary>
    public void Aggregate(string path, Ref whole, IReadOnlyCollection<Ref> parts)
    {
        if (parts.Count > 0)
        {
            file.Add($"IFCRELAGGREGATES({Id(path + "/parts")},$,$,$,{whole},{parts})");
        }
    }

    /// <summary>A frame or a bay.</summary>
    public Ref Assembly(string name, string kind, Ref place) =>
        file.Add($"IFCELEMENTASSEMBLY({Id(name)},$,{name},$,{kind},{place},$,{name},.SITE.,.USERDEFINED.)");

    /// <summary>A wooden part.</summary>
    public Ref Wood(string id, Piece piece, Ref place, Ref shape)
    {
        var words = RoleTable.Of(piece.Role).Words;
        return RoleTable.Of(piece.Role).Building switch
        {
            BuildingPart.Beam => file.Add($"IFCBEAM({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.BEAM.)"),
            BuildingPart.Joist => file.Add($"IFCBEAM({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.JOIST.)"),
            BuildingPart.Post => file.Add($"IFCMEMBER({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.POST.)"),
            BuildingPart.Brace => file.Add($"IFCMEMBER({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.BRACE.)"),
            BuildingPart.Member => file.Add($"IFCMEMBER({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.MEMBER.)"),
            BuildingPart.Plate => file.Add($"IFCPLATE({Id(id)},$,{id},{words},$,{place},{shape},{piece.Mark},.SHEET.)"),
            _ => throw new ArgumentOutOfRangeException(nameof(piece), piece.Role, "No such part of a building."),
        };
    }

    /// <summary>A rope.</summary>
    public Ref Rope(string name, Ref place, Ref shape) => file.Add(
        $"IFCMEMBER({Id(RopeIds.Of(name))},$,{RopeIds.Of(name)},$,'WIRE ROPE',{place},{shape},$,.USERDEFINED.)");

    /// <summary>A plate, which is one body; or a bolt with what is on it.</summary>
    public Ref Steel(string id, SteelPart part, Ref place, Ref shape) => part.IsBolt
        ? file.Add($"IFCMECHANICALFASTENER({Id(id)},$,{id},{part.Words},$,{place},{shape},{part.Name},"
            + $"{part.Size.Width},{part.Size.Length},.BOLT.)")
        : file.Add($"IFCPLATE({Id(id)},$,{id},{part.Words},$,{place},{shape},{part.Name},.SHEET.)");

    /// <summary>Something that is shown and is no piece of the bridge.</summary>
    public Ref StandIn(string id, string words, string kind, Ref place, Ref shape) =>
        file.Add($"IFCBUILDINGELEMENTPROXY({Id(id)},$,{id},{words},{kind},{place},{shape},$,.ELEMENT.)");

    /// <summary>What all places of a plate or a bolt have in common.</summary>
    public void Describe(SteelPart part, string metal, IReadOnlyCollection<Ref> parts)
    {
        Ref[] sizes = part.IsBolt
            ? [Length("Diameter", "Of the bolt", part.Size.Width), Length("Length", "Under the head", part.Size.Length)]
            :
            [
                Length("Length", "Along the post or brace", part.Size.Length), Length("Width", "Across it", part.Size.Width),
                Length("Thickness", "Of the plate", part.Size.Thickness),
            ];
        Ref[] properties =
        [
            Label("Mark", part.Name), Label("Words", part.Words), .. sizes,
            Mass(part.IsBolt ? "With washer and nut" : "As bought, before its holes", part.Mass),
        ];
        Describe(part.Name, "BridgeForm_Steel", properties, parts);
        Made(metal, part.Name, parts);
    }

    /// <summary>What all places of a piece have in common.</summary>
    public void Describe(Piece piece, StockParameters stock, IReadOnlyCollection<Ref> parts)
    {
        Ref[] properties =
        [
            Label("Mark", piece.Mark), Label("Role", RoleTable.Of(piece.Role).Name), Label("Stock", piece.Stock),
            Label("Section", piece.Section), Label("Species", stock.Species), Label("Grade", stock.Grade),
            Label("Treatment", WoodWords.Treatment(stock)),
            Mass("At moisture in service", piece.Mass),
            Length("BlankLength", "Shortest square-ended stick that holds it", piece.BlankLength),
        ];
        Describe(piece.Mark, "BridgeForm_Piece", properties, parts);
        Made(WoodWords.Of(stock), piece.Mark, parts);
    }

    /// <summary>Name, diameter and mass of the ropes.</summary>
    public void Describe(RopeParameters ropes, double mass, IReadOnlyCollection<Ref> parts)
    {
        Ref[] properties =
        [
            Label("Rope", ropes.Rope.Name), Length("Diameter", "Nominal", ropes.Rope.Diameter),
            Mass("From support to support, without what runs on to anchors", mass),
        ];
        Describe(RopeIds.Group, "BridgeForm_Rope", properties, parts);
        Made(SteelWords.Of(ropes.Rope), RopeIds.Group, parts);
    }

    private void Describe(string path, string set, Ref[] properties, IReadOnlyCollection<Ref> parts)
    {
        var all = file.Add($"IFCPROPERTYSET({Id(path + "/properties")},$,{set},$,{properties})");
        file.Add($"IFCRELDEFINESBYPROPERTIES({Id(path + "/described")},$,$,$,{parts},{all})");
    }

    private void Made(string material, string path, IReadOnlyCollection<Ref> parts)
    {
        if (!_materials.TryGetValue(material, out var known))
        {
            _materials[material] = known = file.Add($"IFCMATERIAL({material},$,$)");
        }

        file.Add($"IFCRELASSOCIATESMATERIAL({Id(path + "/material")},$,$,$,{parts},{known})");
    }

    private Ref Mass(string words, double kilograms) =>
        file.Add($"IFCPROPERTYSINGLEVALUE('Mass',{words},IFCMASSMEASURE({kilograms}),$)");

    private Ref Length(string name, string words, double metres) =>
        file.Add($"IFCPROPERTYSINGLEVALUE({name},{words},IFCPOSITIVELENGTHMEASURE({metres}),$)");

    private Ref Label(string name, string value) => file.Add($"IFCPROPERTYSINGLEVALUE({name},$,IFCLABEL({value}),$)");
}
