namespace IfcCourser.Walls;

/// <summary>What of a wall bears a name.</summary>
public enum NameKind
{
    /// <summary>A material layer.</summary>
    Layer,

    /// <summary>The material itself, of a layer or of the whole wall.</summary>
    Material,

    /// <summary>Category of a layer or material.</summary>
    Category,

    /// <summary>An element that the wall is made of.</summary>
    Part,

    /// <summary>The layer set or constituent set.</summary>
    LayerSet,

    /// <summary>The wall's type.</summary>
    Type,

    /// <summary>The wall.</summary>
    Wall,
}
