using System.Globalization;

namespace BridgeForm.Roles;

/// <summary>
/// Id of a part: <c>F03/base</c>, <c>F03/post-left</c>, <c>B05/board-2</c>, <c>B05/rail-left-1</c>. Written and read here
/// alone.
/// </summary>
/// <param name="Owner">Name of its frame or bay.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Side">Which side it stands on, of a role that stands on both.</param>
/// <param name="Number">From 1, where there are several; 0 for the only one.</param>
public readonly record struct PartId(string Owner, Role Role, Side Side = Side.None, int Number = 0)
{
    private const string Left = "-left";
    private const string Right = "-right";

    /// <summary>The part of an id; null for what is none, such as a rope.</summary>
    public static PartId? Read(string id)
    {
        var slash = id.IndexOf('/', StringComparison.Ordinal);
        var name = id.AsSpan(slash + 1);
        foreach (var facts in slash < 0 ? [] : RoleTable.All)
        {
            if (name.StartsWith(facts.Name, StringComparison.Ordinal) && Rest(name[facts.Name.Length..]) is var (side, number))
            {
                return new PartId(id[..slash], facts.Role, side, number);
            }
        }

        return null;
    }

    /// <summary>Name of the frame or bay in an id.</summary>
    public static string OwnerOf(string id) => id[..id.IndexOf('/', StringComparison.Ordinal)];

    /// <summary>The whole id.</summary>
    public override string ToString()
    {
        var side = Side switch { Side.Left => Left, Side.Right => Right, _ => "" };
        var number = Number > 0 ? "-" + Number.ToString(CultureInfo.InvariantCulture) : "";
        return string.Concat(Owner, "/", RoleTable.Of(Role).Name, side + number);
    }

    /// <summary>Side and number after a role's name; null where something else follows.</summary>
    private static (Side Side, int Number)? Rest(ReadOnlySpan<char> text)
    {
        var (side, length) = text.StartsWith(Left, StringComparison.Ordinal) ? (Side.Left, Left.Length)
            : text.StartsWith(Right, StringComparison.Ordinal) ? (Side.Right, Right.Length)
            : (Side.None, 0);
        var number = text[length..];
        return number.IsEmpty ? (side, 0)
            : number[0] == '-' && int.TryParse(number[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? (side, n)
            : null;
    }
}
