namespace IfcCourser.Output.Sheets.Walls;

/// <summary>On which side of a tier's line the numbers stand: towards smaller or larger coordinates.</summary>
internal enum TextSide
{
    Before,
    After,
}
