using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A lintel that fits over openings.</summary>
/// <param name="Carried">The openings, from left to right.</param>
/// <param name="Product">The product; null for a formed beam.</param>
/// <param name="Run">From end to end.</param>
/// <param name="Heights">From its underside to its top.</param>
/// <param name="Rows">The courses it lies in.</param>
internal sealed record LintelFit(ImmutableArray<OpeningLayout> Carried, LintelProduct? Product, Interval Run, Interval Heights, LintelRows Rows)
{
    /// <summary>From the first left to the last right jamb.</summary>
    public Interval Over => OverOf(Carried);

    public Length BearingLeft => Over.From - Run.From;

    public Length BearingRight => Run.To - Over.To;

    public static Interval OverOf(ImmutableArray<OpeningLayout> carried) =>
        new(carried[0].Placed.Left, carried.Max(opening => opening.Placed.Right));
}
