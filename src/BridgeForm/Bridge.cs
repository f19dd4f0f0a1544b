using System.Collections.Immutable;
using BridgeForm.Checks;
using BridgeForm.Frames;
using BridgeForm.Pieces;
using BridgeForm.Project;
using BridgeForm.Ropes;

namespace BridgeForm;

/// <summary>Parameters → rope shape → frames → members → pieces → model: the whole pipe.</summary>
public static class Bridge
{
}
