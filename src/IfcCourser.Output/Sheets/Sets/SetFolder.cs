namespace IfcCourser.Output.Sheets.Sets;

/// <summary>Where a sheet's files go.</summary>
public enum SetFolder
{
    /// <summary>What the rod setter takes along.</summary>
    SetOut,

    /// <summary>What the mason takes along.</summary>
    Walls,
}
