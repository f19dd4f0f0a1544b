using System.Reflection;

namespace BridgeForm.Tests.Checks.Catalogue;

/// <summary>A method with one of its marks.</summary>
internal sealed record ProofCase(MethodInfo Method, ProvesAttribute Proves)
{
    /// <summary>All there are, found in the tests themselves.</summary>
    public static IReadOnlyDictionary<string, ProofCase> All { get; } = typeof(ProofCase).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
        .SelectMany(m => m.GetCustomAttributes<ProvesAttribute>().Select(p => new ProofCase(m, p)))
        .ToDictionary(c => c.Name, StringComparer.Ordinal);

    public string Name => $"{Proves.Id} {Proves.Status} {Proves.Side}: {Method.DeclaringType!.Name}.{Method.Name}";

    public Proof Run() =>
        (Proof)Method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, Method.GetParameters().Length == 0 ? [] : [Proves.Share], null)!;
}
