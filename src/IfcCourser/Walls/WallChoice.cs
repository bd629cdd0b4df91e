namespace IfcCourser.Walls;

/// <summary>Which walls of a model are laid out.</summary>
public enum WallChoice
{
    /// <summary>Those whose layer, material or type names match the catalog's words.</summary>
    Masonry,

    /// <summary>Every wall; where no layer matches, its whole body.</summary>
    All,
}
