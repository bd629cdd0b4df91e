using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>Where the strip of one wall crosses the strip of another.</summary>
public static class Crossing
{
    /// <summary>
    /// The stretch of a wall's run, mm, that lies between another wall's faces, over the wall's whole thickness: for square
    /// ones the other's thickness, else longer by the slant.
    /// </summary>
    /// <param name="wall">Whose run is measured.</param>
    /// <param name="across">Its faces.</param>
    /// <param name="other">The wall that crosses, not parallel.</param>
    /// <param name="otherAcross">The other's faces.</param>
    public static Slab On(WallSpace wall, Slab across, WallSpace other, Slab otherAcross)
    {
        Span<double> places =
        [
            Place(wall, across.From, other, otherAcross.From),
            Place(wall, across.From, other, otherAcross.To),
            Place(wall, across.To, other, otherAcross.From),
            Place(wall, across.To, other, otherAcross.To),
        ];
        places.Sort();
        return new Slab(places[0], places[^1]);
    }

    /// <summary>How much farther along a wall another one crosses its right face than its left one, mm.</summary>
    public static double Slant(WallSpace wall, Slab across, WallSpace other) =>
        Place(wall, across.From, other, 0) - Place(wall, across.To, other, 0);

    /// <summary>Where along a wall a line at an offset from its axis meets a line of the other wall.</summary>
    private static double Place(WallSpace wall, double left, WallSpace other, double otherLeft)
    {
        var normal = wall.PlanDirection(other.Direction.Left);
        var origin = wall.Plan(other.Origin.Plan);
        return origin.X + ((otherLeft - (normal.Y * (left - origin.Y))) / normal.X);
    }
}
