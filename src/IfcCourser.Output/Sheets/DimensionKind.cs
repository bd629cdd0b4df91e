namespace IfcCourser.Output.Sheets;

/// <summary>How a dimension is drawn (ISO 129-1).</summary>
public enum DimensionKind
{
    /// <summary>Between two extension lines, the text over the dimension line.</summary>
    Single,

    /// <summary>One of several from a common origin on one dimension line, the text at the end of its own extension line.</summary>
    Running,
}
