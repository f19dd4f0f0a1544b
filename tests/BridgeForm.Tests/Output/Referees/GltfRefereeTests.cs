using System.Text.Json;
using BridgeForm.Ropes;
using BridgeForm.Solids;
using BridgeForm.Tests.Output.Gltf;
using BridgeForm.Tests.Output.Samples;

namespace BridgeForm.Tests.Output.Referees;

/// <summary>Khronos' glTF validator finds neither errors nor warnings.</summary>
[Trait("Category", "Referee")]
public sealed class GltfRefereeTests
{
    public static TheoryData<string> Names => ["small", "many", "wide indices", "no ropes", "empty", "one frame"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Validator_finds_nothing(string name) => Referee.OnFile(GltfWriterTests.Bytes(Model(name)), "model.glb", path =>
    {
        var report = JsonDocument.Parse(Referee.Node("gltf-validate.js", path)).RootElement[0];
        var messages = report.GetProperty("messages").GetRawText();
        Assert.True(report.GetProperty("numErrors").GetInt32() == 0, messages);
        Assert.True(report.GetProperty("numWarnings").GetInt32() == 0, messages);
    });

    private static BridgeModel Model(string name) => name switch
    {
        "small" => SampleModel.Small,
        "many" => SampleModel.WithBays(60, 10),
        "wide indices" => SampleModel.Small with
        {
            RopeLines = [new RopeLine("left", 0.01, [.. Enumerable.Range(0, 6000).Select(i => new Vector3d(0.01 * i, 0, 0))])],
        },
        "no ropes" => SampleModel.Small with { RopeLines = [] },
        "empty" => SampleModel.Small with { Pieces = [], Groups = [], RopeLines = [] },
        "one frame" => SampleModel.Small with { Groups = [SampleModel.Small.Groups[0]], RopeLines = [] },
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such model."),
    };
}
