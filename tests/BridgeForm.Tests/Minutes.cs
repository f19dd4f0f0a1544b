namespace BridgeForm.Tests;

/// <summary>MINUTES=1 in the environment: whoever runs the tests has the time for what takes minutes.</summary>
internal static class Minutes
{
    public static bool AreThere => Environment.GetEnvironmentVariable("MINUTES") is { Length: > 0 };

    /// <summary>How many random cases: as many as a run of every commit has time for, or as many as found faults before.</summary>
    public static int Cases(int usual, int many) => AreThere ? many : usual;
}

/// <summary>A test of half a minute and more, run where there are minutes; a smaller one of the same kind runs always.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class MinutesFactAttribute : FactAttribute
{
    public MinutesFactAttribute()
    {
        if (!Minutes.AreThere)
        {
            Skip = "takes minutes: MINUTES=1 runs it";
        }
    }
}
