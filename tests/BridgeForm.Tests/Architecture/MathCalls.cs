using Mono.Cecil;

namespace BridgeForm.Tests.Architecture;

/// <summary>
/// Calls in compiled assemblies of arithmetic whose last digit hangs on the machine: everything of numbers' own types and of
/// mathematical libraries that is not known to be exact.
/// </summary>
internal static class MathCalls
{
    private static readonly string[] s_numbers =
        ["System.Math", "System.MathF", "System.Double", "System.Single", "System.Half", "System.Numerics.Complex"];

    // Exact by IEEE 754, or no arithmetic at all.
    private static readonly string[] s_exact =
    [
        "Abs", "BitDecrement", "BitIncrement", "Ceiling", "Clamp", "CompareTo", "CopySign", "DivRem", "Equals", "Floor", "GetHashCode",
        "IsFinite", "IsInfinity", "IsInteger", "IsNaN", "IsNegative", "IsNegativeInfinity", "IsOddInteger", "IsPositiveInfinity",
        "IsSubnormal", "Max", "Min", "Parse", "Round", "ScaleB", "Sign", "Sqrt", "ToString", "Truncate", "TryFormat", "TryParse",
    ];

    // Sums of as many numbers at once as a processor's registers hold, and functions of any type of number.
    private static readonly string[] s_elsewhere =
    [
        "System.Numerics.Tensors.", "System.Numerics.Vector", "System.Runtime.Intrinsics.", "System.Numerics.IExponentialFunctions",
        "System.Numerics.IFloatingPointIeee754", "System.Numerics.IHyperbolicFunctions", "System.Numerics.ILogarithmicFunctions",
        "System.Numerics.IPowerFunctions", "System.Numerics.IRootFunctions", "System.Numerics.ITrigonometricFunctions", "MathNet.",
    ];

    // Read, and found to be sums, products and roots in one order, the same in every register and thread: points in single precision;
    // four doubles side by side; and of MathNet 5.0 its exceptions, small dense matrices, and one search for roots.
    private static readonly Dictionary<string, string[]> s_read = new(StringComparer.Ordinal)
    {
        ["System.Numerics.Complex"] = ["get_Real"],
        ["System.Numerics.Vector3"] = [".ctor", "Equals", "Max", "Min", "get_Zero", "op_Addition"],
        ["System.Runtime.Intrinsics.Vector128"] = ["MaxNative", "MinNative"],
        ["System.Runtime.Intrinsics.Vector128`1"] = ["get_Item"],
        ["System.Runtime.Intrinsics.Vector256"] =
        [
            "ConditionalSelect", "CopyTo", "Create", "ExtractMostSignificantBits", "GetLower", "GetUpper", "GreaterThan", "MaxNative",
            "MinNative", "get_IsHardwareAccelerated",
        ],
        ["System.Runtime.Intrinsics.Vector256`1"] = ["get_Count", "op_Addition", "op_Multiply"],
        ["MathNet.Numerics.NonConvergenceException"] = [".ctor"],
        ["MathNet.Numerics.RootFinding.Brent"] = ["FindRoot"],
        ["MathNet.Numerics.LinearAlgebra.Matrix`1"] = ["Diagonal", "Evd", "LU", "ToArray", "get_Item", "set_Item"],
        ["MathNet.Numerics.LinearAlgebra.Vector`1"] = ["AbsoluteMinimum"],
        ["MathNet.Numerics.LinearAlgebra.Double.DenseMatrix"] = [".ctor", "Create"],
        ["MathNet.Numerics.LinearAlgebra.Factorization.Evd`1"] = ["get_EigenValues", "get_EigenVectors"],
        ["MathNet.Numerics.LinearAlgebra.Factorization.LU`1"] = ["Inverse", "get_U"],
    };

    /// <summary>Every such call: who makes it, and what it calls.</summary>
    /// <param name="assemblies">Paths of assemblies.</param>
    public static IReadOnlyList<string> In(params string[] assemblies) =>
        [.. assemblies.SelectMany(InOne).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static List<string> InOne(string assembly)
    {
        using var module = ModuleDefinition.ReadModule(assembly);
        return
        [
            .. from type in module.GetTypes()
               from method in type.Methods
               where method.HasBody
               from operand in method.Body.Instructions.Select(i => i.Operand).OfType<MethodReference>()
               where HangsOnTheMachine(operand)
               select $"{type.FullName}.{method.Name} calls {Name(operand)}",
        ];
    }

    private static bool HangsOnTheMachine(MethodReference called)
    {
        var type = called.DeclaringType.GetElementType().FullName;
        var read = s_read.GetValueOrDefault(type, []).Contains(called.Name, StringComparer.Ordinal);
        return called.DeclaringType is not ArrayType && !read
            && (s_elsewhere.Any(e => type.StartsWith(e, StringComparison.Ordinal))
                || (s_numbers.Contains(type, StringComparer.Ordinal) && !IsExact(called.Name)));
    }

    private static bool IsExact(string name) =>
        s_exact.Contains(name, StringComparer.Ordinal) || name.StartsWith("op_", StringComparison.Ordinal);

    private static string Name(MethodReference called) => $"{called.DeclaringType.GetElementType().FullName}::{called.Name}";
}
