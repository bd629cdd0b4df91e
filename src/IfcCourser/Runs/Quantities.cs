using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Sums up a wall.</summary>
internal static class Quantities
{
    public static WallQuantities Of(
        ElevationOutline outline, Length thickness, ImmutableArray<OpeningLayout> openings, ImmutableArray<Course> courses, ImmutableArray<BondBeam> beams)
    {
        var opening = openings.Where(o => o.Interrupts).Sum(o => outline.AreaWithin(o.Placed));
        var net = outline.Area - opening;
        var pieces = courses.SelectMany(course => course.Pieces).ToList();
        var cut = pieces.Count(piece => piece.Cut != Cuts.None);
        return new WallQuantities(outline.Area, opening, net, net * thickness.Mm / 1000, pieces.Count - cut, cut,
            pieces.Count(piece => piece.IsTrough), beams.Sum(beam => beam.GroutVolume));
    }
}
