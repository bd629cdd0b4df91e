using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>
/// The one table of pens. Weight says how much a line matters to the mason, hatch says what he must do, colour only
/// helps on a screen: edges he builds to are heaviest (0.7), what carries next (0.5), what he saws or keeps clear
/// is 0.35, joints between whole blocks recede (0.18). Dashes are kept for what is not there: axes, the designed place
/// of a moved opening, the level line. Grey is used only for what may be overlooked: neighbours and hatch.
/// </summary>
/// <remarks>
/// Widths: series of ISO 128-2. ISO 13567-2 names (fixed fields; agent W is the contractor, presentation E element, T text,
/// D dimension, H hatch, P page: from memory). NCS names: discipline Z is contractor or shop drawings (from memory).
/// </remarks>
public sealed class PenTable
{
    private static readonly ImmutableArray<Row> _rows =
    [
        new(Pen.OuterEdge, "W-EDGE--E-", "Z-WALL-EDGE", 70, LineType.Continuous, 7, 0),
        new(Pen.WholeBlock, "W-BLOCK-E-", "Z-WALL-UNIT", 18, LineType.Continuous, 8, 0),
        new(Pen.CutBlock, "W-CUT---E-", "Z-WALL-CUTS", 35, LineType.Continuous, 1, 0),
        new(Pen.CutHatch, "W-CUT---H-", "Z-WALL-CUTS-PATT", 13, LineType.Continuous, 8, 35),
        new(Pen.CutLength, "W-CUT---T-", "Z-WALL-CUTS-TEXT", 35, LineType.Continuous, 7, 0),
        new(Pen.Core, "W-CORE--E-", "Z-RBAR-CNTR", 35, LineType.Centre, 5, 0),
        new(Pen.Lintel, "W-LINTELE-", "Z-LNTL-EDGE", 50, LineType.Continuous, 3, 0),
        new(Pen.LintelHatch, "W-LINTELH-", "Z-LNTL-PATT", 13, LineType.Continuous, 8, 35),
        new(Pen.ModuleTick, "W-MODULEE-", "Z-GRID-MODL", 25, LineType.Continuous, 8, 0),
        new(Pen.DesignedJamb, "W-DESIGNE-", "Z-OPNG-DSGN", 35, LineType.Dashed, 6, 0),
        new(Pen.MovementJoint, "W-JOINT-E-", "Z-WALL-JNTC", 50, LineType.Continuous, 4, 0),
        new(Pen.BuiltIn, "W-EMBED-E-", "Z-WALL-EMBD", 25, LineType.Continuous, 4, 0),
        new(Pen.LevelLine, "W-LEVEL-E-", "Z-LEVL-LINE", 35, LineType.LongDash, 5, 0),
        new(Pen.Neighbour, "W-NEXT--E-", "Z-WALL-NEXT", 18, LineType.Continuous, 8, 35),
        new(Pen.ThisWall, "W-KEY---E-", "Z-ANNO-KEYN", 50, LineType.Continuous, 7, 0),
        new(Pen.Dimension, "W-DIMENSD-", "Z-ANNO-DIMS", 18, LineType.Continuous, 7, 0),
        new(Pen.Text, "W-NOTE--T-", "Z-ANNO-TEXT", 25, LineType.Continuous, 7, 0),
        new(Pen.Heading, "W-TITLE-T-", "Z-ANNO-TITL", 50, LineType.Continuous, 7, 0),
        new(Pen.Table, "W-TABLE-P-", "Z-ANNO-SCHD", 18, LineType.Continuous, 7, 0),
        new(Pen.Frame, "W-FRAME-P-", "Z-ANNO-TTLB", 70, LineType.Continuous, 7, 0),
        new(Pen.NotPrinted, "W-VIEW--P-", "Z-ANNO-NPLT", 13, LineType.Continuous, 9, 70),
        new(Pen.SlabEdge, "W-SLAB--E-", "Z-SLAB-EDGE", 50, LineType.Continuous, 2, 0),
        new(Pen.OpeningAbove, "W-OPEN--E-", "Z-OPNG-ABOV", 25, LineType.Dashed, 6, 0),
        new(Pen.MatchLine, "W-MATCH-E-", "Z-ANNO-MTCH", 70, LineType.Centre, 7, 0),
        new(Pen.Gone, "W-GONE--E-", "Z-WALL-GONE", 35, LineType.Dashed, 8, 0),
        new(Pen.Revised, "W-REVISEE-", "Z-ANNO-REVS", 50, LineType.Continuous, 1, 0),
        new(Pen.GridLine, "W-GRID--E-", "Z-GRID-LINE", 25, LineType.Centre, 8, 0),
    ];

    private readonly ImmutableArray<PenStyle> _styles;

    private PenTable(LayerNames preset) =>
        _styles = [.. _rows.OrderBy(row => row.Pen).Select(row => row.Style(preset))];

    public static PenTable Iso13567 { get; } = new(LayerNames.Iso13567);

    public static PenTable Ncs { get; } = new(LayerNames.Ncs);

    /// <summary>In the order of <see cref="Pen"/>.</summary>
    public ImmutableArray<PenStyle> Styles => _styles;

    public PenStyle this[Pen pen] => _styles[(int)pen];

    public static PenTable For(LayerNames preset) => preset == LayerNames.Ncs ? Ncs : Iso13567;

    /// <summary>As the rule set says; where it says nothing, NCS for sets in inches.</summary>
    public static PenTable For(LayoutRules rules) => For(rules.Set.Layers ?? (rules.Catalog.Units == UnitSystem.Inch ? LayerNames.Ncs : LayerNames.Iso13567));

    private sealed record Row(Pen Pen, string Iso, string Ncs, int Width, LineType Line, int Colour, int Grey)
    {
        public PenStyle Style(LayerNames preset) =>
            new(Pen, preset == LayerNames.Ncs ? Ncs : Iso, Width, Line, Colour, Grey);
    }
}
