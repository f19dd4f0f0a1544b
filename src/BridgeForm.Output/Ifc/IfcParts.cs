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
    public Ref Steel(string id, SteelPart part, Ref place, Ref shape) => part.Bodies.Length == 1
        ? file.Add($"IFCPLATE({Id(id)},$,{id},{part.Words},$,{place},{shape},{part.Name},.SHEET.)")
        : file.Add($"IFCMECHANICALFASTENER({Id(id)},$,{id},{part.Words},$,{place},{shape},{part.Name},$,$,.BOLT.)");

    /// <summary>Something that is shown and is no piece of the bridge.</summary>
    public Ref StandIn(string id, string words, string kind, Ref place, Ref shape) =>
        file.Add($"IFCBUILDINGELEMENTPROXY({Id(id)},$,{id},{words},{kind},{place},{shape},$,.ELEMENT.)");

    /// <summary>What all places of a plate or a bolt have in common.</summary>
    public void Describe(SteelPart part, IReadOnlyCollection<Ref> parts)
    {
        Describe(part.Name, "BridgeForm_Steel", [Label("Mark", part.Name), Label("Words", part.Words)], parts);
        Made("mild steel, galvanized", part.Name, parts);
    }

    /// <summary>What all places of a piece have in common.</summary>
    public void Describe(Piece piece, StockParameters stock, IReadOnlyCollection<Ref> parts)
    {
        Ref[] properties =
        [
            Label("Mark", piece.Mark), Label("Role", RoleTable.Of(piece.Role).Name), Label("Stock", piece.Stock),
            Label("Section", piece.Section), Label("Species", stock.Species), Label("Grade", stock.Grade),
            Label("Treatment", WoodWords.Treatment(stock)),
            file.Add($"IFCPROPERTYSINGLEVALUE('Mass','At moisture in service',IFCMASSMEASURE({piece.Mass}),$)"),
            file.Add($"IFCPROPERTYSINGLEVALUE('BlankLength','Shortest square-ended stick that holds it',"
                + $"IFCPOSITIVELENGTHMEASURE({piece.BlankLength}),$)"),
        ];
        Describe(piece.Mark, "BridgeForm_Piece", properties, parts);
        Made(WoodWords.Of(stock), piece.Mark, parts);
    }

    /// <summary>Name and diameter of the ropes.</summary>
    public void Describe(RopeParameters ropes, IReadOnlyCollection<Ref> parts)
    {
        Ref[] properties =
        [
            Label("Rope", ropes.Rope.Name),
            file.Add($"IFCPROPERTYSINGLEVALUE('Diameter',$,IFCPOSITIVELENGTHMEASURE({ropes.Rope.Diameter}),$)"),
        ];
        Describe(RopeIds.Group, "BridgeForm_Rope", properties, parts);
        Made("steel wire rope", RopeIds.Group, parts);
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

    private Ref Label(string name, string value) => file.Add($"IFCPROPERTYSINGLEVALUE({name},$,IFCLABEL({value}),$)");
}
