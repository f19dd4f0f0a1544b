namespace BridgeForm;

/// <summary>
/// Runs works that do not hang on each other and returns when all are done. Given by the caller: the model itself starts no
/// thread and waits for none. A work may throw; what is thrown then is for the runner to choose.
/// </summary>
/// <param name="works">In the order in which one thread takes them.</param>
public delegate void SideBySide(params Action[] works);
