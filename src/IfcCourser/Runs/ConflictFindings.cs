using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Panels;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// Openings that stand in the way of another opening, of a corner, of a wall that meets theirs, or whose lintel meets a movement joint; each with the
/// least way along the wall that parts the two. Overlaps within the module's tolerance are dust of the model.
/// </summary>
/// <param name="openings">Those of the wall that interrupt its courses.</param>
internal sealed class ConflictFindings(Wall wall, ImmutableArray<OpeningLayout> openings, LayoutRules rules)
{
    private readonly UnitSystem _units = rules.Catalog.Units;

    public IEnumerable<Finding> Of(ImmutableArray<MetWall> met, ImmutableArray<MovementJoint> joints) =>
        Overlapping().Concat(openings.SelectMany(opening => met.Select(other => WithWall(opening, other)).Concat(joints.Select(joint => WithJoint(opening, joint))).OfType<Finding>()));

    private IEnumerable<Finding> Overlapping() =>
        from first in Enumerable.Range(0, openings.Length)
        from second in Enumerable.Range(first + 1, openings.Length - first - 1)
        let a = openings[first]
        let b = openings[second]
        where Meet(a.Design, b.Design)
        select Told(FindingCodes.OpeningsOverlap, a, Messages.OpeningsOverlap(
            OpeningFindings.NameOf(a), OpeningFindings.NameOf(b), Way(b.Design, a.Design.Left, a.Design.Right), _units));

    private Finding? WithWall(OpeningLayout opening, MetWall other)
    {
        var stretch = new ElevationRect(other.Place.From, other.Place.To, other.Heights.From, other.Heights.To);
        var isMoved = !Meet(opening.Design, stretch);
        var stands = isMoved ? opening.Placed : opening.Design;
        if (!Meet(stands, stretch) || IsTold(opening, other, stretch))
        {
            return null;
        }

        var way = other.Place.Side switch
        {
            JunctionSide.Start => stretch.Right - stands.Left,
            JunctionSide.End => stretch.Left - stands.Right,
            _ => Way(stands, stretch.Left, stretch.Right),
        };
        return other.Place.Side == JunctionSide.Along
            ? Told(FindingCodes.OpeningAtTee, opening, Messages.OpeningAtTee(OpeningFindings.NameOf(opening), other.Name, way, isMoved, _units))
            : Told(FindingCodes.OpeningAtCorner, opening, Messages.OpeningAtCorner(OpeningFindings.NameOf(opening), other.Name, way, isMoved, _units));
    }

    /// <summary>A wall that ends for the greater part in an opening is a finding of the model (<see cref="FindingCodes.TeeInOpening"/>).</summary>
    private bool IsTold(OpeningLayout opening, MetWall other, ElevationRect stretch)
    {
        var (drawn, top) = (opening.Opening.Model, wall.Outline.Max(point => point.Z));
        var height = Length.Min(stretch.Top, top) - Length.Max(stretch.Bottom, Length.Zero);
        return other.Kind == JunctionKind.Tee
            && (Length.Min(drawn.Right, stretch.Right) - Length.Max(drawn.Left, stretch.Left)) * 2 > stretch.Width
            && (Length.Min(drawn.Top, stretch.Top) - Length.Max(drawn.Bottom, stretch.Bottom)) * 2 > height;
    }

    /// <summary>A joint over an opening's head, nearer to its jamb than a lintel bears.</summary>
    private Finding? WithJoint(OpeningLayout opening, MovementJoint joint)
    {
        var placed = opening.Placed;
        var (from, to) = (joint.At - (joint.Width / 2), joint.At + (joint.Width / 2));
        if (joint.Top <= placed.Top || joint.Bottom > placed.Top)
        {
            return null;
        }

        var bearing = LintelChoice.BearingOf(LintelChoice.Serving(placed.Width, wall.Frame.Thickness, rules).FirstOrDefault(), rules);
        var (before, behind) = (placed.Left - to, from - placed.Right);
        var room = Length.Max(before, behind);
        return room >= bearing ? null : Told(FindingCodes.LintelAtJoint, opening, Messages.LintelAtJoint(
            OpeningFindings.NameOf(opening), joint.At, room, bearing, behind >= before ? bearing - room : room - bearing, _units));
    }

    private bool Meet(ElevationRect a, ElevationRect b) =>
        Length.Min(a.Right, b.Right) - Length.Max(a.Left, b.Left) > rules.ModuleTolerance
        && Length.Min(a.Top, b.Top) - Length.Max(a.Bottom, b.Bottom) > rules.ModuleTolerance;

    /// <summary>The shorter way along the run that takes a rectangle off a stretch; negative to the left.</summary>
    private static Length Way(ElevationRect stands, Length from, Length to) =>
        to - stands.Left <= stands.Right - from ? to - stands.Left : from - stands.Right;

    private static Finding Told(FindingCode code, OpeningLayout opening, string message) => new(code, message, OpeningFindings.PlaceOf(opening));
}
