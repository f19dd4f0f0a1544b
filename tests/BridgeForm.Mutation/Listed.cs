using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>A place named by what it reads: a survivor of an earlier search, or one shown to be equivalent.</summary>
internal sealed record Listed
{
    private static readonly JsonSerializerOptions s_options = new(JsonSerializerDefaults.Web);

    /// <summary>What it would mean on a bridge; for an equivalent one, why nothing can tell it apart.</summary>
    public required string Why { get; init; }

    public required string File { get; init; }

    /// <summary>Type and member.</summary>
    public required string Member { get; init; }

    public required string Original { get; init; }

    public required string Mutated { get; init; }

    /// <summary>How many places in the member read alike before it.</summary>
    public int Occurrence { get; init; }

    /// <summary>Tests that kill it, Namespace.Class.Method; of a theory one case, its arguments or their beginning following.</summary>
    public ImmutableArray<string> KilledBy { get; init; } = [];

    public static ImmutableArray<Listed> Read(string path) =>
        [.. JsonSerializer.Deserialize<Listed[]>(System.IO.File.ReadAllText(path), s_options)!];

    public bool Is(Site site) =>
        (File, Member, Site.Collapsed(Original), Site.Collapsed(Mutated), Occurrence)
        == (site.File, site.Member, site.Original, Site.Collapsed(site.Mutated), site.Occurrence);

    /// <summary>The place in the source as it stands; an error when it is gone.</summary>
    public Site Planted(IEnumerable<SourceProject> projects, ConstantUses constants)
    {
        foreach (var project in projects)
        {
            foreach (
                var tree in project.Compilation.SyntaxTrees.Where(t => string.Equals(project.Local(t), File, StringComparison.Ordinal)))
            {
                // The inmost of nodes that read alike: a parenthesis, an argument or a clause is no expression of its own.
                var found = tree.GetRoot().DescendantNodes().OfType<ExpressionSyntax>()
                    .Where(e => string.Equals(Site.Collapsed(e.ToString()), Site.Collapsed(Original), StringComparison.Ordinal))
                    .Where(e => string.Equals(Candidates.Member(e), Member, StringComparison.Ordinal))
                    .DistinctBy(e => e.SpanStart)
                    .ToArray();
                if (found.Length > Occurrence)
                {
                    return new Candidates(project, tree, constants).SiteAt(found[Occurrence], "listed", Mutated, Occurrence);
                }
            }
        }

        throw new InvalidOperationException(
            $"{File}: {Member} no longer reads '{Original}'; bring the list of {nameof(BridgeForm)}.{nameof(Mutation)} up to date");
    }
}
