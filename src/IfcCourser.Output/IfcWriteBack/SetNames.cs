namespace IfcCourser.Output.IfcWriteBack;

/// <summary>Names of the sets that are written; they never change, since re-runs find their sets by them.</summary>
internal static class SetNames
{
    /// <summary>On every wall.</summary>
    public const string Coursing = "IfcCourser_Coursing";

    /// <summary>On openings and what fills them.</summary>
    public const string Opening = "IfcCourser_Opening";

    /// <summary>On the blocks of the parts file, one for each kind of piece.</summary>
    public const string Piece = "IfcCourser_Piece";

    /// <summary>Quantities of coursed walls.</summary>
    public const string Quantities = "IfcCourser_Quantities";
}
