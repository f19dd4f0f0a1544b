namespace BridgeForm.Cli.Streams;

/// <summary>What a person types in front of a command: it depends on how the program was come by.</summary>
internal static class OwnName
{
    /// <summary>The name of the installed program, which messages are written with.</summary>
    public const string Installed = "bridgeform";

    private const string Project = "BridgeForm.Cli.csproj";

    /// <summary>Of this run.</summary>
    public static string Find() => Of(Environment.ProcessPath, AppContext.BaseDirectory, Here());

    // A folder may be gone from under a shell: then the name is told as from the program's own.
    private static string Here()
    {
        try
        {
            return Environment.CurrentDirectory;
        }
        catch (IOException)
        {
            return AppContext.BaseDirectory;
        }
    }

    /// <summary>
    /// A checkout's program is run through its project; a tool of one folder by the host, with its name behind it; everything else
    /// is installed, and goes by the name of its file.
    /// </summary>
    /// <param name="host">File of the running program: its own, or the host that runs all of them; null when unknown.</param>
    /// <param name="folder">Where the program's files lie.</param>
    /// <param name="here">Where the person is.</param>
    public static string Of(string? host, string folder, string here)
    {
        var file = Path.GetFileName(host) ?? Installed;
        file = file.EndsWith(".exe", StringComparison.OrdinalIgnoreCase) ? file[..^4] : file;
        if (string.Equals(file, Installed, StringComparison.OrdinalIgnoreCase))
        {
            return Installed;
        }

        // Behind it: configuration, and framework.
        var project = Path.GetFullPath(Path.Combine(folder, "..", "..", ".."));
        if (File.Exists(Path.Combine(project, Project)))
        {
            var way = Path.GetRelativePath(here, project).Replace('\\', '/');
            return $"dotnet run --project {(way.Contains(' ', StringComparison.Ordinal) ? $"\"{way}\"" : way)} --";
        }

        return string.Equals(file, "dotnet", StringComparison.OrdinalIgnoreCase) ? "dotnet " + Installed : file;
    }

    /// <summary>A message with this run's name in the commands that it quotes: <c>'bridgeform list ropes'</c>.</summary>
    public static string In(string message, string name) => name is Installed
        ? message
        : message.Replace($"'{Installed} ", $"'{name} ", StringComparison.Ordinal);
}
