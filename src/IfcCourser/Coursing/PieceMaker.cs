using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Turns the fillings of a course into pieces: named, cut to the outline and to lintels let in, their cuts told.</summary>
internal sealed class PieceMaker(ElevationOutline outline, ImmutableArray<Lintel> lintels, LayoutRules rules)
{
    public Course Make(LaidCourse course, ImmutableArray<Core> cores)
    {
        var boxes = course.Shape.Segments
            .SelectMany((segment, i) => course.Rows[i].Select(piece => segment.Box with
            {
                Left = segment.Box.Left + piece.From,
                Right = segment.Box.Left + piece.To,
            }))
            .OrderBy(box => box.Left)
            .ThenBy(box => box.Bottom);
        var band = course.Shape.Band;
        return new Course(
            band.Number, band.Kind, band.Bottom, band.Top, course.Shape.Spans,
            [.. boxes.Select((box, i) => Make(FormattableString.Invariant($"C{band.Number}P{i + 1}"), box, band, cores))]);
    }

    public Piece Make(string id, ElevationRect box, CourseBand band, ImmutableArray<Core> cores)
    {
        var letIn = lintels.Where(lintel => LetInLintel.IsIn(lintel, band, rules)).Select(lintel => LetInLintel.WithJoints(lintel, rules));
        var part = outline.Within(box, letIn).MaxBy(part => part.Area);
        var shape = part?.Points;
        var (bottom, top) = part is null ? (box.Bottom, box.Top) : (part.Box.Bottom, part.Box.Top);
        var isWhole = box.Width == rules.Catalog.UnitLength;
        var isPart = rules.Catalog.PartLengths.Contains(box.Width);
        var cut = (isWhole || isPart ? Cuts.None : Cuts.Length) | ShapeCut(shape, top - bottom);
        var passing = cores.Where(core => core.At > box.Left && core.At < box.Right && core.Top > bottom && core.Bottom < top).ToImmutableArray();
        return new Piece
        {
            Id = id,
            Product = isPart && cut == Cuts.None ? "part unit" : "unit",
            From = box.Left,
            To = box.Right,
            Bottom = bottom,
            Top = top,
            Outline = shape,
            Cut = cut,
            IsFull = isWhole && cut == Cuts.None,
            Cores = [.. passing.Select(core => core.Id)],
            Notch = band.Number == 1 && passing.Length > 0 ? NotchFor(passing[0].At, passing[0].Diameter, box.Left, box.Right) : null,
        };
    }

    private Cuts ShapeCut(ImmutableArray<ElevationPoint>? shape, Length height)
    {
        if (shape is not { } points)
        {
            return height == rules.Catalog.UnitHeight || rules.Catalog.OtherHeights.Contains(height) ? Cuts.None : Cuts.Height;
        }

        var slopes = points.Where((point, i) => points[(i + 1) % points.Length] is var next && point.S != next.S && point.Z != next.Z);
        return slopes.Any() ? Cuts.Rake : Cuts.Notch;
    }

    /// <summary>
    /// An opening at the core's foot to see and clean it before grouting, as wide and high as the core.
    /// Clean-outs measure at least 3 in (TMS 602 art. 3.2 F, from memory).
    /// </summary>
    public static Notch NotchFor(Length core, Length diameter, Length from, Length to) =>
        new("right", Length.Max(from, core - (diameter / 2)), Length.Min(to, core + (diameter / 2)), diameter);
}
