namespace IfcCourser.Output.Bcf;

/// <summary>The versions of the BIM Collaboration Format that are written and read.</summary>
public enum BcfVersion
{
    /// <summary>2.1.</summary>
    V21,

    /// <summary>3.0.</summary>
    V30,
}
