using System.Security.Cryptography;
using System.Text;

namespace BridgeForm.Output.Part21;

/// <summary>Identifiers that stay the same as long as a thing's place in the model does.</summary>
internal static class ModelPath
{
    // The digits in which IFC writes its 128 bits (buildingSMART, IFC4, IfcGloballyUniqueId), from memory.
    private const string Digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
    private const int Length = 22;
    private const int BitsPerDigit = 6;

    /// <summary>
    /// 22 digits of base 64 that hold the first 128 bits of the SHA-256 of a path, such as <c>F03/post-left</c>, below the name of
    /// the bridge.
    /// </summary>
    public static string Identifier(string bridge, string path)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(bridge + "\n" + path));
        var digits = new char[Length];
        var number = new UInt128(BitConverter.ToUInt64(hash, 0), BitConverter.ToUInt64(hash, sizeof(ulong)));
        for (var i = Length - 1; i >= 0; i--)
        {
            digits[i] = Digits[(int)(number & ((1 << BitsPerDigit) - 1))];
            number >>= BitsPerDigit;
        }

        return new string(digits);
    }
}
