namespace IfcCourser.Layouts;

/// <summary>How far an offcut may go to be used.</summary>
public enum OffcutReuse
{
    /// <summary>Within the wall it was sawn for.</summary>
    Wall,

    /// <summary>Within the storey.</summary>
    Storey,

    /// <summary>Anywhere.</summary>
    Job,
}
