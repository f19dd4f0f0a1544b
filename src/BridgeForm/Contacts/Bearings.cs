using BridgeForm.Frames;
using BridgeForm.Roles;

namespace BridgeForm.Contacts;

/// <summary>Which parts rest on which, by their names.</summary>
internal static class Bearings
{
    /// <summary>
    /// What a part must rest on: each entry is a set of ids of which it must touch at least one. Bases rest on the ropes
    /// (<see cref="RopeContacts"/> looks at that) or on their landing and are not listed.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="from">Frame it belongs to, or frame at the A end of its bay.</param>
    /// <param name="to">The same frame, or the one at the B end of its bay.</param>
    /// <param name="stringers">Ids of the stringers of its bay; none elsewhere.</param>
    public static IEnumerable<string[]> Of(SurveyedPart part, string from, string to, IReadOnlyList<string> stringers)
    {
        switch (part.Role)
        {
            case Role.Post:
            case Role.Packer:
                yield return [from + "/base"];
                break;
            case Role.Brace:
                yield return [from + "/base"];
                yield return [$"{from}/post-{part.Side.Suffix()}"];
                break;
            case Role.Tread:
                foreach (var stringer in stringers)
                {
                    yield return [stringer];
                }

                break;
            case Role.Board:
            case Role.Stringer:
                yield return [from + "/base", from + "/packer"];
                yield return [to + "/base", to + "/packer"];
                break;
            case Role.Rail:
            case Role.Cap:
                yield return [$"{from}/post-{part.Side.Suffix()}"];
                yield return [$"{to}/post-{part.Side.Suffix()}"];
                break;
        }
    }
}
