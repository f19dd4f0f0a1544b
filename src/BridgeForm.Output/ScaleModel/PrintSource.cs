using BridgeForm.Pieces;
using BridgeForm.Roles;

namespace BridgeForm.Output.ScaleModel;

/// <summary>One part in its place.</summary>
internal sealed record PartOf(PartId Id, Piece Piece, Occurrence At);

/// <summary>The bridge by frames and bays, and the rules of its printing.</summary>
internal sealed class PrintSource
{
    private readonly ILookup<string, PartOf> _parts;

    public PrintSource(BridgeModel model)
    {
        (Model, Rules) = (model, PrintRules.Of(model.Parameters));
        _parts = model.Pieces.SelectMany(p => p.Occurrences.Select(o => new PartOf(PartId.Read(o.Id)!.Value, p, o)))
            .OrderBy(p => p.Id.Role).ThenBy(p => p.Id.Side).ThenBy(p => p.Id.Number)
            .ToLookup(p => p.Id.Owner, StringComparer.Ordinal);
    }

    public BridgeModel Model { get; }

    public PrintRules Rules { get; }

    /// <summary>Names of the bays, from A on.</summary>
    public IEnumerable<string> Bays => Model.Groups.Skip(Model.Frames.Length).Select(g => g.Name);

    /// <summary>Parts of a frame or a bay, by role, side and number.</summary>
    public IEnumerable<PartOf> Of(string owner) => _parts[owner];

    /// <summary>The same of some roles.</summary>
    public List<PartOf> Of(string owner, params Role[] roles) => [.. Of(owner).Where(p => roles.Contains(p.Id.Role))];

    /// <summary>A part as it stands.</summary>
    public PrintPart Take(PartOf part) => PrintPart.Of(Model.Parameters, Rules, part.Piece, part.At);
}
