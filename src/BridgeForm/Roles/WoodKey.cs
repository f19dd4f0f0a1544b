namespace BridgeForm.Roles;

/// <summary>Which key of the project file chooses the wood of a part.</summary>
public enum WoodKey
{
    /// <summary><c>frames.base.stock</c>.</summary>
    Base,

    /// <summary><c>frames.post.stock</c>.</summary>
    Post,

    /// <summary><c>frames.brace.stock</c>.</summary>
    Brace,

    /// <summary><c>deck.board.stock</c>.</summary>
    Board,

    /// <summary><c>deck.stringer.stock</c>; nothing is chosen where the deck has no stringers.</summary>
    Stringer,

    /// <summary><c>guard.rails.stock</c>.</summary>
    Rail,

    /// <summary><c>guard.cap.stock</c>.</summary>
    Cap,

    /// <summary><c>deck.cleats.stock</c>; nothing is chosen where there are none.</summary>
    Cleat,

    /// <summary><c>guard.pickets.stock</c>; nothing is chosen where there are none.</summary>
    Picket,

    /// <summary><c>guard.handrail.stock</c>; nothing is chosen where there is none.</summary>
    Handrail,

    /// <summary><c>guard.newels.stock</c>; nothing is chosen where there are none.</summary>
    Newel,

    /// <summary>No key: as the bases' if that is treated, else treated where the file has any.</summary>
    LikeBaseButTreated,
}
