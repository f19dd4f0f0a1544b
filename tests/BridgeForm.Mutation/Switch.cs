namespace BridgeForm.Mutation;

/// <summary>The switch that is compiled into the mutated model; it is read once, when the first place asks for it.</summary>
internal static class Switch
{
    /// <summary>Environment variable with the number of the place that is on; absent or 0 for none.</summary>
    public const string Variable = "BRIDGEFORM_MUTANT";

    public const string TypeName = "BridgeForm.Mutant";

    public static string Call(int number) => $"global::{TypeName}.Is({number})";

    /// <summary>Source of the switch: it also remembers which places were reached.</summary>
    public static string Source(int sites) => $$"""
        namespace BridgeForm;

        public static class Mutant
        {
            private static readonly int Active =
                int.TryParse(System.Environment.GetEnvironmentVariable("{{Variable}}"), out var number) ? number : 0;

            public static readonly bool[] Reached = new bool[{{sites + 1}}];

            public static bool Is(int number)
            {
                Reached[number] = true;
                return number == Active;
            }
        }
        """;
}
