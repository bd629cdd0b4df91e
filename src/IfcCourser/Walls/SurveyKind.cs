namespace IfcCourser.Walls;

/// <summary>Where the axes of a point list come from.</summary>
public enum SurveyKind
{
    /// <summary>The model's map conversion.</summary>
    Map,

    /// <summary>The crossing of two grid lines, easting along one of them.</summary>
    Grid,

    /// <summary>The model's own axes, easting along x.</summary>
    Model,
}
