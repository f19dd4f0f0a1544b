using System.Collections.Immutable;

namespace BridgeForm.Output.Drawing;

/// <summary>One page of paper with a drawing on it at true size.</summary>
/// <param name="Width">Width of the paper, metres.</param>
/// <param name="Height">Height of the paper, metres.</param>
/// <param name="Content">What is drawn; the paper's lower left corner is the origin.</param>
public sealed record SheetPage(double Width, double Height, Sheet Content);

/// <summary>Pages bound together.</summary>
/// <param name="Title">One line that names it; shown by readers as the window's title.</param>
/// <param name="Pages">One or more pages, of any sizes.</param>
public sealed record SheetBook(string Title, ImmutableArray<SheetPage> Pages);
