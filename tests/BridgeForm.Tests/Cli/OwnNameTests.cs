using BridgeForm.Cli;
using BridgeForm.Cli.Streams;
using BridgeForm.Tests.Samples;

namespace BridgeForm.Tests.Cli;

/// <summary>What is to be run next is told as this run was begun.</summary>
public sealed class OwnNameTests
{
    private static readonly string s_built = Path.Combine(Sample.Root, "src", "BridgeForm.Cli", "bin", "Release", "net10.0");

    [Theory]
    [InlineData("/usr/local/bin/bridgeform", "/usr/local/bin", "bridgeform")]
    [InlineData("/home/a/bridgeform.exe", "/home/a", "bridgeform")]
    [InlineData("/usr/bin/dotnet", "/home/a/tools/net10.0/any", "dotnet bridgeform")]
    [InlineData("/opt/bridge-tool", "/opt", "bridge-tool")]
    [InlineData(null, "/opt", "bridgeform")]
    public void Installed(string? host, string folder, string name) => Assert.Equal(name, OwnName.Of(host, folder, "/home/a"));

    [Fact]
    public void From_a_checkout()
    {
        var host = Path.Combine(s_built, "BridgeForm.Cli");
        Assert.Equal("dotnet run --project src/BridgeForm.Cli --", OwnName.Of(host, s_built, Sample.Root));
        Assert.Equal("dotnet run --project src/BridgeForm.Cli --", OwnName.Of("/usr/bin/dotnet", s_built, Sample.Root));
        Assert.Equal("dotnet run --project ../src/BridgeForm.Cli --", OwnName.Of(host, s_built, Path.Combine(Sample.Root, "docs")));
    }

    [Fact]
    public void Every_next_step_has_it()
    {
        using var run = new CommandRun();
        var file = run.Path("bridge.yaml");
        Assert.Contains("'x y start ", Said("check", file), StringComparison.Ordinal);
        Assert.Contains("'x y --help'", Said("chek"), StringComparison.Ordinal);
        Assert.Contains("then: x y check ", Said("start", file), StringComparison.Ordinal);
        Assert.Contains("Next: x y check ", Said("check", file), StringComparison.Ordinal);
        Assert.Contains("'x y list checks'", Said("check", file, "--explain", "no-such"), StringComparison.Ordinal);
        run.Write("bridge.yaml", "name: A\nsite: { span: 30 ft }\nropes: { type: twine }\n");
        Assert.Contains("'x y list ropes'", Said("check", file), StringComparison.Ordinal);
    }

    private static string Said(params string[] arguments)
    {
        using var said = new StringWriter();
        Application.Run(arguments, said, said, "x y");
        Assert.DoesNotContain("bridgeform check", said.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("bridgeform list", said.ToString(), StringComparison.Ordinal);
        return said.ToString();
    }
}
