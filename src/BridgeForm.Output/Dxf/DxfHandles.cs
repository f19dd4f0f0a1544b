namespace BridgeForm.Output.Dxf;

/// <summary>Handles of everything that is the same in each file; layers and entities follow from fixed numbers on.</summary>
internal static class DxfHandles
{
    public const int Root = 0xC;
    public const int Groups = 0xD;
    public const int ViewportTable = 0x1;
    public const int Viewport = 0x10;
    public const int LinetypeTable = 0x2;
    public const int LinetypeByBlock = 0x11;
    public const int LinetypeByLayer = 0x12;
    public const int LinetypeContinuous = 0x13;
    public const int LayerTable = 0x3;
    public const int StyleTable = 0x4;
    public const int Style = 0x14;
    public const int ViewTable = 0x5;
    public const int UcsTable = 0x6;
    public const int AppIdTable = 0x7;
    public const int AppId = 0x15;
    public const int DimStyleTable = 0x8;
    public const int DimStyle = 0x16;
    public const int BlockRecordTable = 0x9;
    public const int ModelSpace = 0x17;
    public const int PaperSpace = 0x18;
    public const int ModelBlock = 0x19;
    public const int ModelBlockEnd = 0x1A;
    public const int PaperBlock = 0x1B;
    public const int PaperBlockEnd = 0x1C;

    /// <summary>Handle of layer 0; further layers follow.</summary>
    public const int FirstLayer = 0x20;

    /// <summary>Handle of the first entity of a file with so many layers besides layer 0.</summary>
    public static int FirstEntity(int layers) => FirstLayer + layers + 1;
}
