namespace BridgeForm.Roles;

/// <summary>What is done in a step of the assembly.</summary>
public enum AssemblyWork
{
    /// <summary>Base, posts and braces become a frame, on the ground.</summary>
    BuildFrame,

    /// <summary>The end frame is set on its landing, with its packer.</summary>
    SetEndFrame,

    /// <summary>The frame is hung on the ropes at its marks and its keepers are closed, with its packer.</summary>
    HangFrame,

    /// <summary>Boards, or stringers and then treads.</summary>
    LayDeck,

    /// <summary>Rails, lowest first.</summary>
    FixRails,

    /// <summary>Caps.</summary>
    FixCaps,
}
