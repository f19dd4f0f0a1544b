namespace BridgeForm;

/// <summary>Stages of the pipe, in the order in which one thread takes them. All but the last two are the answer.</summary>
public enum Stage
{
    /// <summary>Design state of the ropes.</summary>
    Shape,

    /// <summary>Where frames, deck and caps lie.</summary>
    Layout,

    /// <summary>Every member where it lies.</summary>
    Members,

    /// <summary>Distinct pieces, cut as solids.</summary>
    Pieces,

    /// <summary>Masses, load cases, hoisting, marks.</summary>
    Ropework,

    /// <summary>Every pair of parts near each other.</summary>
    Contacts,

    /// <summary>The verdict.</summary>
    Checks,

    /// <summary>Boards to buy.</summary>
    Stock,

    /// <summary>What would pass where a check fails.</summary>
    Remedies,
}
