using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Panels;

/// <summary>Places of a wall that ask for a movement joint whatever its length: given ones, and steps of its height.</summary>
internal sealed class AskedJoints(Wall wall, ElevationOutline outline, MovementJointRule rule)
{
    /// <summary>Given places first.</summary>
    public IEnumerable<JointPlace> All() => Given().Concat(Steps());

    public IEnumerable<JointPlace> Given() => wall.MovementJoints.Distinct().Order().Select(at => new JointPlace(at, "given"));

    /// <summary>The joint stands on the lower side of a step, so that the higher side ends upright.</summary>
    public IEnumerable<JointPlace> Steps()
    {
        var near = Length.FromMm(1);
        foreach (var place in wall.Outline.Select(point => point.S).Distinct().Order().Where(s => s > outline.Box.Left + near && s < outline.Box.Right - near))
        {
            var (left, right) = (outline.HighestWithin(place - (near * 2), place - near), outline.HighestWithin(place + near, place + (near * 2)));
            if (Length.Abs(left - right) >= rule.HeightStep)
            {
                yield return new JointPlace(left < right ? place - (rule.Width / 2) : place + (rule.Width / 2), "height");
            }
        }
    }
}
