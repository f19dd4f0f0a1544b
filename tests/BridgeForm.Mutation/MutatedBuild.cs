using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BridgeForm.Mutation;

/// <summary>Compiles the model once with the switch at every chosen place.</summary>
internal sealed class MutatedBuild(IReadOnlyList<SourceProject> projects, ConstantUses constants, string folder)
{
    // More than any drawing of lots uses.
    private const int MostSites = 20_000;

    private readonly Dictionary<string, MetadataReference> _made = new(StringComparer.Ordinal);

    /// <summary>Writes the mutated assemblies over those in the folder.</summary>
    /// <returns>Numbers of the places that do not compile when changed.</returns>
    public IReadOnlySet<int> Write(IReadOnlyDictionary<int, Site> sites)
    {
        var refused = new HashSet<int>();
        foreach (var project in projects)
        {
            while (Write(project, sites.Where(s => !refused.Contains(s.Key)).ToDictionary()) is { Count: > 0 } more)
            {
                refused.UnionWith(more);
            }
        }

        return refused;
    }

    private HashSet<int> Write(SourceProject project, Dictionary<int, Site> sites)
    {
        var compilation = Woven(project, sites);
        using var image = new MemoryStream();
        var result = compilation.Emit(image, manifestResources: project.Resources);
        if (!result.Success)
        {
            return result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error).Select(Culprit).ToHashSet();
        }

        File.WriteAllBytes(Path.Combine(folder, project.Name + ".dll"), image.ToArray());
        _made[project.Name + ".dll"] = MetadataReference.CreateFromImage(image.ToArray());
        return [];
    }

    private CSharpCompilation Woven(SourceProject project, Dictionary<int, Site> sites)
    {
        var compilation = project.Compilation;
        foreach (var reference in compilation.References.OfType<PortableExecutableReference>())
        {
            if (_made.TryGetValue(Path.GetFileName(reference.FilePath!), out var made))
            {
                compilation = compilation.ReplaceReference(reference, made);
            }
        }

        var converted = sites.Values.SelectMany(s => constants.Converted(s.Constant ?? "") ?? new HashSet<string>(StringComparer.Ordinal))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var tree in project.Compilation.SyntaxTrees)
        {
            if (project.Local(tree) is not { } file)
            {
                continue;
            }

            var model = project.Compilation.GetSemanticModel(tree);
            var here = sites.Where(s => string.Equals(s.Value.File, file, StringComparison.Ordinal)).ToArray();
            if (here.Length == 0 && !ConstantUses.Fields(tree).Any(Converts))
            {
                continue;
            }

            var weaver = new Weaver(here.ToLookup(s => (s.Value.Start, s.Value.Original), s => (s.Key, s.Value)), Converts);
            var root = weaver.Visit(tree.GetRoot())!;
            if (here.FirstOrDefault(s => !weaver.Woven.Contains(s.Key)) is { Value: { } lost })
            {
                throw new InvalidOperationException($"{lost.File}:{lost.Line}: '{lost.Original}' was not found again");
            }

            compilation = compilation.ReplaceSyntaxTree(
                tree,
                CSharpSyntaxTree.ParseText(
                    root.ToFullString(), (CSharpParseOptions)tree.Options, tree.FilePath, System.Text.Encoding.UTF8));

            bool Converts(VariableDeclaratorSyntax v) => converted.Contains(ConstantUses.Name(model.GetDeclaredSymbol(v)!));
        }

        return project == projects[0]
            ? compilation.AddSyntaxTrees(CSharpSyntaxTree.ParseText(
                Switch.Source(MostSites), (CSharpParseOptions)compilation.SyntaxTrees[0].Options, "Mutant.cs", System.Text.Encoding.UTF8))
            : compilation;
    }

    /// <summary>The place whose change does not compile.</summary>
    private static int Culprit(Diagnostic error)
    {
        var node = error.Location.SourceTree?.GetRoot().FindNode(error.Location.SourceSpan, getInnermostNodeForTie: true);
        var condition = node?.AncestorsAndSelf().OfType<ConditionalExpressionSyntax>().Select(c => c.Condition.ToString())
            .FirstOrDefault(c => c.StartsWith(Switch.Call(0)[..^2], StringComparison.Ordinal));
        return condition is not null
            ? int.Parse(condition[(Switch.Call(0).Length - 2)..^1], System.Globalization.CultureInfo.InvariantCulture)
            : throw new InvalidOperationException($"the mutated model does not compile: {error}");
    }
}
