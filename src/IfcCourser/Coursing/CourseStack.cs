using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// The courses of a wall on its group's lines, in model heights: the first may start above its line and the last may end
/// below its own top; two rips at the top may part elsewhere than on a line. A bond beam may lie on top of them, of a unit's
/// height whatever lies under it.
/// </summary>
/// <param name="Lines">The group's lines.</param>
/// <param name="First">Line of the first course.</param>
/// <param name="Bottom">Where it starts.</param>
/// <param name="LastUnder">Line of the last course, the beam not counted.</param>
/// <param name="TopUnder">Where it ends.</param>
/// <param name="Split">Top of the lower of two rips that share the last two courses.</param>
/// <param name="EndsInBeam">Whether a bond beam lies on top.</param>
internal sealed record CourseStack(CourseLines Lines, int First, Length Bottom, int LastUnder, Length TopUnder, Length? Split = null, bool EndsInBeam = false)
{
    /// <summary>Line of the last course; a beam's is the next, though it may lie off it.</summary>
    public int Last => EndsInBeam ? LastUnder + 1 : LastUnder;

    /// <summary>Where the last course ends.</summary>
    public Length Top => EndsInBeam ? TopUnder + Lines.Joint + Lines.UnitHeight : TopUnder;

    /// <summary>Whether the beam on top lies off the line that others of the group's courses lie on.</summary>
    public bool IsBeamOffLine => EndsInBeam && (BottomOf(Last) != Lines.Bottom(Last) || Top != Lines.Top(Last));

    public Length BottomOf(int line) => line == First ? Bottom
        : line > LastUnder ? TopUnder + Lines.Joint
        : line == LastUnder && Split is { } split ? split + Lines.Joint
        : Lines.Bottom(line);

    public Length TopOf(int line) => line > LastUnder ? Top
        : line == LastUnder ? TopUnder
        : line == LastUnder - 1 && Split is { } split ? split
        : Lines.Top(line);

    public Length HeightOf(int line) => TopOf(line) - BottomOf(line);

    /// <summary>Lines of the courses that are neither as high as a unit nor as another one of the catalog.</summary>
    public IEnumerable<int> Cut(Catalog catalog) => Enumerable.Range(First, Last - First + 1).Where(line => !IsUnit(HeightOf(line), catalog));

    /// <summary>The courses above the wall's base.</summary>
    public ImmutableArray<CourseBand> Bands(Length wallBase, Catalog catalog) =>
    [
        .. Enumerable.Range(First, Last - First + 1).Select(line => new CourseBand(
            line - First + 1,
            line,
            line == First ? CourseKind.Levelling : IsUnit(HeightOf(line), catalog) ? CourseKind.Unit : CourseKind.Rip,
            BottomOf(line) - wallBase,
            TopOf(line) - wallBase)),
    ];

    private static bool IsUnit(Length height, Catalog catalog) => height == catalog.UnitHeight || catalog.OtherHeights.Contains(height);
}
