using System.Reflection;
using System.Runtime.Loader;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace BridgeForm.Mutation;

/// <summary>The tests' assembly and the mutated model, loaded afresh: nothing that an earlier load computed is left.</summary>
internal sealed class TestClasses : IDisposable
{
    private readonly Assembly _tests;
    private readonly ITestAssembly _assembly;
    private readonly XunitTestFrameworkDiscoverer _discoverer;
    private readonly RunOptions _options = new();

    public TestClasses(string folder)
    {
        var context = new AssemblyLoadContext("tests");
        context.Resolving += (_, name) =>
            Path.Combine(folder, name.Name + ".dll") is var path && File.Exists(path) ? context.LoadFromAssemblyPath(path) : null;
        _tests = context.LoadFromAssemblyPath(Path.Combine(folder, "BridgeForm.Tests.dll"));
        var model = context.LoadFromAssemblyPath(Path.Combine(folder, "BridgeForm.dll"));
        Reached = (bool[])model.GetType(Switch.TypeName)!.GetField("Reached")!.GetValue(null)!;
        var info = Reflector.Wrap(_tests);
        _assembly = new TestAssembly(info);
        _discoverer = new(info, new NoSources(), new Sink(_ => { }));
    }

    /// <summary>Lets the discoverer go.</summary>
    public void Dispose() => _discoverer.Dispose();

    /// <summary>Which places were reached since it was last cleared.</summary>
    public bool[] Reached { get; }

    /// <summary>Classes with tests, by full name.</summary>
    public IEnumerable<string> Names => _tests.GetTypes()
        .Where(t => t is { IsAbstract: false, IsClass: true } && t.GetMethods().Any(IsTest))
        .Select(t => t.FullName!)
        .Order(StringComparer.Ordinal);

    /// <summary>Runs the tests of a class one after the other until one fails.</summary>
    /// <param name="name">Full name of the class.</param>
    /// <param name="wanted">Beginning of the names of the tests that run, "Method" or "Method(argument: ..."; empty for all.</param>
    /// <returns>How many ran, and the first that failed.</returns>
    public (int Run, string? Failed) Run(string name, string wanted = "")
    {
        var cases = Cases(name).Where(c => IsWanted(c.DisplayName[(name.Length + 1)..], wanted)).ToArray();
        string? failed = null;
        using var runner = new XunitTestAssemblyRunner(_assembly, cases, new Sink(_ => { }), new Sink(Take), _options);
        var summary = runner.RunAsync().GetAwaiter().GetResult();
        return (summary.Total, failed ?? (summary.Failed > 0 ? name : null));

        void Take(IMessageSinkMessage message)
        {
            if (message is ITestFailed test)
            {
                failed ??= test.Test.DisplayName;
                Console.Error.WriteLine($"{test.Test.DisplayName}: {string.Join(" <- ", test.Messages)}");
            }
        }
    }

    /// <summary>The method's whole name, or that and the beginning of its arguments.</summary>
    private static bool IsWanted(string test, string wanted) => wanted.Length == 0
        || (test.StartsWith(wanted, StringComparison.Ordinal)
        && (wanted.Contains('(') || test.Length == wanted.Length || test[wanted.Length] == '('));

    private static bool IsTest(MethodInfo method) => method.GetCustomAttributes().Any(a => a is Xunit.FactAttribute);

    private IEnumerable<IXunitTestCase> Cases(string name)
    {
        var found = new List<IXunitTestCase>();
        using var done = new ManualResetEventSlim();
        var sink = new Sink(message =>
        {
            if (message is ITestCaseDiscoveryMessage { TestCase: IXunitTestCase test }
                && !test.Traits.Any(t => t.Value.Contains(Left.Referees)))
            {
                found.Add(test);
            }
            else if (message is IDiscoveryCompleteMessage)
            {
                done.Set();
            }
        });
        _discoverer.Find(name, includeSourceInformation: false, sink, _options);
        done.Wait();
        return found;
    }

    private sealed class NoSources : ISourceInformationProvider
    {
        public ISourceInformation? GetSourceInformation(ITestCase testCase) => null;

        public void Dispose()
        {
            // Holds nothing.
        }
    }

    private sealed class Sink(Action<IMessageSinkMessage> take) : IMessageSink
    {
        public bool OnMessage(IMessageSinkMessage message)
        {
            take(message);
            return message is not ITestFailed;
        }
    }

    /// <summary>One test at a time, and none after the first that fails.</summary>
    private sealed class RunOptions : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object> _values = new(StringComparer.Ordinal)
        {
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.MaxParallelThreads"] = 1,
            ["xunit.execution.SynchronousMessageReporting"] = true,
            ["xunit.execution.StopOnTestFail"] = true,
        };

        public TValue GetValue<TValue>(string name) => _values.TryGetValue(name, out var value) ? (TValue)value : default!;

        public void SetValue<TValue>(string name, TValue value) => _values[name] = value!;
    }
}
