using System.Collections.Immutable;

namespace BridgeForm.Mutation;

/// <summary>The whole run: choose places, compile once, learn which tests reach them, run these.</summary>
internal static class Search
{
    private static readonly string[] s_projects = ["BridgeForm", "BridgeForm.Output", "BridgeForm.Cli"];

    // Where changes are drawn from; each of the five gives the same number.
    private static readonly string[] s_areas =
    [
        "src/BridgeForm/Ropes/", "src/BridgeForm/Loads/", "src/BridgeForm/Frames/", "src/BridgeForm/Checks/", "src/BridgeForm.Output/",
    ];

    public static int Run(Options options)
    {
        var root = Root();
        var data = Path.Combine(root, "tests", "BridgeForm.Mutation");
        var projects = s_projects.AsParallel().AsOrdered().Select(p => SourceProject.Load(root, p)).ToArray();
        var constants = new ConstantUses(projects);
        var listed = Listed.Read(Path.Combine(data, "survivors.json"));
        var sites = new List<(Site Site, Listed? Listed)>(listed.Select(l => (l.Planted(projects, constants), (Listed?)l)));
        if (!options.SurvivorsOnly)
        {
            sites.AddRange(
                Lots.Drawn(Candidates(projects, constants), s_areas, options, [.. sites.Select(s => s.Site)]).Select(
                    s => (s, (Listed?)null)));
        }

        if (options.Count)
        {
            return 0;
        }

        var numbered = sites.Select((s, i) => (Number: i + 1, s.Site, s.Listed)).ToImmutableArray();
        var folder = Copied(root, data, options.SurvivorsOnly ? "survivors" : "all");
        var refused = new MutatedBuild(projects, constants, folder).Write(numbered.ToDictionary(n => n.Number, n => n.Site));
        if (numbered.FirstOrDefault(n => n.Listed is not null && refused.Contains(n.Number)) is { Site: { } lost })
        {
            throw new InvalidOperationException($"{lost.File}:{lost.Line}: '{lost.Mutated}' does not compile");
        }

        numbered = [.. numbered.Where(n => !refused.Contains(n.Number) && (options.Only.Count == 0 || options.Only.Contains(n.Number)))];
        return options.SurvivorsOnly
            ? Survivors(folder, numbered)
            : Everything(folder, numbered, Listed.Read(Path.Combine(data, "equivalents.json")), options, root);
    }

    private static IEnumerable<Site> Candidates(SourceProject[] projects, ConstantUses constants) =>
        from project in projects
        from tree in project.Compilation.SyntaxTrees
        let file = project.Local(tree)
        where file is not null && s_areas.Any(a => file.StartsWith(a, StringComparison.Ordinal))
        from site in Mutation.Candidates.Of(project, tree, constants)
        select site;

    private static int Survivors(string folder, ImmutableArray<(int Number, Site Site, Listed? Listed)> numbered)
    {
        if (Judge.Control(folder, numbered.Select(n => n.Listed!)) is { } broken)
        {
            Console.WriteLine($"fails with nothing changed, or is not there: {broken}");
            return 1;
        }

        var results = Told(Judge.All(numbered, n => Judge.ByList(folder, n.Number, n.Site, n.Listed!)));
        Console.WriteLine($"{results.Count(r => r.KilledBy is not null)} of {results.Length} listed survivors killed");
        return results.Any(r => r.KilledBy is null) ? 1 : 0;
    }

    private static int Everything(
        string folder, ImmutableArray<(int Number, Site Site, Listed? Listed)> numbered, ImmutableArray<Listed> equivalents,
        Options options, string root)
    {
        var map = CoverageMap.Of(folder, options.Tests);
        var killers = new Killers(Path.Combine(folder, "killers.txt"));
        var results = Told(Judge.All(numbered, n => Judge.ByMap(folder, map, killers, options.Within, n.Number, n.Site, n.Listed) with
        {
            Equivalent = equivalents.FirstOrDefault(e => e.Is(n.Site))?.Why,
        }));
        foreach (var old in equivalents.Where(e => options.Only.Count == 0 && !numbered.Any(n => e.Is(n.Site))))
        {
            Console.WriteLine($"listed as equivalent, not among the places: {old.File} {old.Member} '{old.Original}'");
        }

        Console.WriteLine(Page.Totals(results));
        if (options.Page is { } page)
        {
            File.WriteAllText(Path.Combine(root, page), Page.Text(results, options));
        }

        return Page.IsEnough(results) ? 0 : 1;
    }

    private static ImmutableArray<Result> Told(IEnumerable<Result> results) =>
    [
        .. results.Select(r =>
        {
            Console.WriteLine(
                $"{r.Number,4}  {r.Site.File}:{r.Site.Line} {r.Site.Member}: {r.Site.Original} → {Site.Collapsed(r.Site.Mutated)}");
            var fate = r.KilledBy is { } by ? "killed: " + by
                : r.Equivalent is { } e ? "equivalent: " + e
                : $"SURVIVES, reached by {r.Reaching} classes";
            Console.WriteLine("      " + fate);
            return r;
        }),
    ];

    /// <summary>The tests as they were built, in a folder where the model can be exchanged.</summary>
    private static string Copied(string root, string data, string name)
    {
        var built = Path.Combine(root, "tests", "BridgeForm.Tests", "bin", "Release", "net10.0");
        var folder = Directory.CreateDirectory(Path.Combine(data, "obj", "mutated", name)).FullName;
        foreach (var file in Directory.EnumerateFiles(built, "*.dll"))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)), overwrite: true);
        }

        return folder;
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BridgeForm.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("BridgeForm.sln is in no folder above this program");
        }

        return folder.FullName;
    }
}
