namespace IfcCourser.SettingOut;

/// <summary>What a block lies along.</summary>
public enum BlockWay
{
    /// <summary>The storey's x axis.</summary>
    X,

    /// <summary>The storey's y axis.</summary>
    Y,

    /// <summary>Neither: the face of its own wall.</summary>
    Face,
}
