using System.Security.Cryptography;
using BridgeForm.Output.Gltf;
using BridgeForm.Output.Report;

namespace BridgeForm.Tests.Pipe;

/// <summary>Hashes of report.json and model.glb of a model.</summary>
internal static class Files
{
    public static (string Report, string Model) Of(BridgeModel model) => (
        Hash(stream => ReportWriter.Write(model, () => [], stream)),
        Hash(stream => GltfWriter.Write(model, solid => solid.Triangulate(), stream)));

    private static string Hash(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Convert.ToHexString(SHA256.HashData(stream.ToArray()));
    }
}
