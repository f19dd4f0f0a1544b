using System.Collections.Immutable;
using BridgeForm.Output.Drawing;

namespace BridgeForm.Output.Templates;

/// <summary>One drawing at true size with its heading; goes on a page, or on several when it is larger than one.</summary>
/// <param name="Title">Heading.</param>
/// <param name="Notes">What to know and do, a sentence each.</param>
/// <param name="Entities">The drawing, anywhere in the plane, on the layers of pages.</param>
internal sealed record TemplateBlock(string Title, ImmutableArray<string> Notes, ImmutableArray<SheetEntity> Entities);
