namespace BridgeForm.Roles;

/// <summary>What a member is for.</summary>
public enum Role
{
    /// <summary>The beam across the ropes.</summary>
    Base,

    /// <summary>Upright of a frame.</summary>
    Post,

    /// <summary>Strut from the base's end to the post's outer face.</summary>
    Brace,

    /// <summary>Deck board that runs from base to base.</summary>
    Board,

    /// <summary>Rail on the posts' inner faces.</summary>
    Rail,

    /// <summary>Flat top rail on the posts' heads.</summary>
    Cap,

    /// <summary>Lengthways bearer of a deck of treads.</summary>
    Stringer,

    /// <summary>Deck board across the bridge.</summary>
    Tread,

    /// <summary>Tapered piece between base and boards.</summary>
    Packer,

    /// <summary>Upright stick on two rails.</summary>
    Picket,

    /// <summary>Rail that a hand closes around, on brackets from the posts.</summary>
    Handrail,

    /// <summary>Strip across the deck for shoes to hold on.</summary>
    Cleat,

    /// <summary>Post on a landing at which a guard ends.</summary>
    Newel,

    /// <summary>Tapered piece between a post's head and its cap.</summary>
    Shim,
}

/// <summary>Which side of the bridge a member lies on, seen walking from A to B.</summary>
public enum Side
{
    /// <summary>Neither; on or across the middle line.</summary>
    None,

    /// <summary>At negative z.</summary>
    Left,

    /// <summary>At positive z.</summary>
    Right,
}
