using System.Collections.Immutable;

namespace BridgeForm.Frames;

/// <summary>Something on the shape that was found which no parts can be cut for, with the keys of the project file it hangs on.</summary>
/// <param name="Key">The key to change first, such as <c>frames.post.length</c>.</param>
/// <param name="Others">Other keys that would help, the likeliest first.</param>
/// <param name="What">What is wrong, as the rest of a sentence that begins with the value of <paramref name="Key"/>.</param>
public sealed record Misfit(string Key, ImmutableArray<string> Others, string What);
