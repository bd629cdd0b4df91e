namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Presentation layers of the parts file.</summary>
internal enum PartLayer
{
    Blocks,
    CutBlocks,
    TroughUnits,
    Lintels,
    BondBeams,
    Bars,
    ModuleLines,
}
