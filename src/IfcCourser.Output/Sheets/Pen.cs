namespace IfcCourser.Output.Sheets;

/// <summary>What a mark on a sheet means; how it looks is in <see cref="PenTable"/> only.</summary>
public enum Pen
{
    /// <summary>Outer edge of the masonry and of its openings.</summary>
    OuterEdge,

    /// <summary>A whole block's edges: thin, they are the joints.</summary>
    WholeBlock,

    /// <summary>Edges of a block that is cut or bought shorter.</summary>
    CutBlock,

    /// <summary>Hatch of a cut block.</summary>
    CutHatch,

    /// <summary>Length of a cut: the largest text of a view.</summary>
    CutLength,

    /// <summary>Axis of a reinforcement core, and its circle in plan.</summary>
    Core,

    /// <summary>Lintels and bond beams: what carries.</summary>
    Lintel,

    /// <summary>Hatch of lintels and bond beams.</summary>
    LintelHatch,

    /// <summary>Ticks of module lines at the wall's edges.</summary>
    ModuleTick,

    /// <summary>An opening where the designer drew it, after it was moved.</summary>
    DesignedJamb,

    MovementJoint,

    /// <summary>Inspection notches and things built in for others.</summary>
    BuiltIn,

    /// <summary>Top of the first course: zero of the mason's heights.</summary>
    LevelLine,

    /// <summary>Another wall: in the key plan, and where it meets this one.</summary>
    Neighbour,

    /// <summary>The wall of this sheet in the key plan.</summary>
    ThisWall,

    Dimension,

    /// <summary>Words and numbers other than dimensions and cut lengths.</summary>
    Text,

    /// <summary>Headings and titles.</summary>
    Heading,

    /// <summary>Rules of tables and of the title block.</summary>
    Table,

    /// <summary>Frame of the drawing space.</summary>
    Frame,

    /// <summary>Edge of a viewport or of the trimmed sheet: seen on the screen, not printed.</summary>
    NotPrinted,

    /// <summary>Edge of a slab in plan.</summary>
    SlabEdge,

    /// <summary>Line of a building grid.</summary>
    GridLine,

    /// <summary>Jambs of an opening that lies over the course of a plan.</summary>
    OpeningAbove,

    /// <summary>Where a wall goes on on another sheet.</summary>
    MatchLine,

    /// <summary>A wall of the last issue that is laid out no more.</summary>
    Gone,

    /// <summary>Around what changed since the last issue, with the letter of the change.</summary>
    Revised,
}
