using System.Collections.Immutable;
using BridgeForm.Roles;

namespace BridgeForm.Output.Lists;

/// <summary>Joints between parts, as they are counted in the list of hardware.</summary>
internal static class JointList
{
    /// <summary>A row a joint, in the order of the parts that make it.</summary>
    public static ReferenceList Make() => new(
        "Joints",
        [
            new("", [new("key", ColumnForm.Key), new("what meets", ColumnForm.Words), new("one for", ColumnForm.Words)],
                [.. RoleTable.All.SelectMany(r => r.Joints).Select(j => Row(j))]),
        ],
        [
            "They are counted in hardware.csv; with what each is fastened, and how strongly, is for a licensed engineer. The forces that "
                + "some of them carry stand in the checks of guard posts, braces and keepers.",
        ]);

    private static ImmutableArray<string> Row(RoleJoint joint) => [joint.Name, joint.What, joint.Count switch
    {
        JointCount.EachChannel => "each channel",
        JointCount.EachEnd => "each end of each part",
        JointCount.EachCarrier => "each part it lies on",
        _ => "each part",
    }];
}
