using System.Collections.Immutable;
using System.Diagnostics;
using System.Text.Json;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace BridgeForm.Mutation;

/// <summary>A project of src as its own build would hand it to the compiler.</summary>
internal sealed class SourceProject
{
    private readonly CSharpCommandLineArguments _arguments;

    private SourceProject(string root, string name, CSharpCommandLineArguments arguments)
    {
        _arguments = arguments;
        Name = name;
        var options = arguments.ParseOptions;
        var plain = arguments.SourceFiles
            .Select(f => CSharpSyntaxTree.ParseText(SourceText.From(File.ReadAllText(f.Path), System.Text.Encoding.UTF8), options, f.Path))
            .ToImmutableArray<SyntaxTree>();
        var references = arguments.MetadataReferences.Select(r => MetadataReference.CreateFromFile(r.Reference)).ToList();
        var compilation = CSharpCompilation.Create(
            name,
            plain,
            references,
            arguments.CompilationOptions
                .WithGeneralDiagnosticOption(ReportDiagnostic.Suppress)
                .WithSpecificDiagnosticOptions([])
                .WithOptimizationLevel(OptimizationLevel.Release)
                .WithSyntaxTreeOptionsProvider(null));
        var generators = arguments.AnalyzerReferences
            .Where(a => a.FilePath.Contains("Microsoft.NETCore.App.Ref", StringComparison.Ordinal))
            .SelectMany(a => new AnalyzerFileReference(a.FilePath, Loader.Only).GetGenerators(LanguageNames.CSharp));
        CSharpGeneratorDriver.Create(generators, parseOptions: options)
            .RunGeneratorsAndUpdateCompilation(compilation, out var whole, out _);
        Compilation = (CSharpCompilation)whole;
        Root = root;
    }

    public string Name { get; }

    public string Root { get; }

    public CSharpCompilation Compilation { get; }

    public IEnumerable<ResourceDescription> Resources => _arguments.ManifestResources;

    /// <summary>Asks the build for the compiler's command line, without compiling.</summary>
    public static SourceProject Load(string root, string name)
    {
        var folder = Path.Combine(root, "src", name);
        string[] asked =
        [
            "msbuild", $"{name}.csproj", "-t:PrepareResources;Compile", "-nologo", "-p:Configuration=Release",
            "-p:SkipCompilerExecution=true",
            "-p:ProvideCommandLineArgs=true", "-p:DesignTimeBuild=true", "-p:BuildProjectReferences=false",
            // The same source gives the same assembly, whatever commit it stands in: the coverage map is known by it.
            "-p:IncludeSourceRevisionInInformationalVersion=false",
            "-p:NonExistentFile=__never__/__never__", "-getItem:CscCommandLineArgs",
        ];
        var start =
            new ProcessStartInfo("dotnet", asked) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true };
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"the build does not say how {name} is compiled:\n{said}");
        }

        var line = JsonDocument.Parse(said).RootElement.GetProperty("Items").GetProperty("CscCommandLineArgs")
            .EnumerateArray().Select(a => a.GetProperty("Identity").GetString()!);
        return new(root, name, CSharpCommandLineParser.Default.Parse(line, folder, sdkDirectory: null));
    }

    /// <summary>Path from the root, with slashes; null for what the build generates.</summary>
    public string? Local(SyntaxTree tree)
    {
        var path = Path.GetRelativePath(Root, tree.FilePath).Replace('\\', '/');
        return path.StartsWith("src/", StringComparison.Ordinal) && !path.Contains("/obj/", StringComparison.Ordinal) ? path : null;
    }

    private sealed class Loader : IAnalyzerAssemblyLoader
    {
        public static Loader Only { get; } = new();

        public void AddDependencyLocation(string fullPath)
        {
            // Generators of the reference pack need nothing beside themselves.
        }

        public System.Reflection.Assembly LoadFromPath(string fullPath) => System.Reflection.Assembly.LoadFrom(fullPath);
    }
}
