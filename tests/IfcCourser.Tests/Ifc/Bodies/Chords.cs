namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>What chords hold of round figures: no chord spans more than five degrees or stands more than a quarter millimetre off its arc.</summary>
internal static class Chords
{
    /// <summary>Area of a sector's chord polygon; a chord of angle a holds sin(a) / a of its sector.</summary>
    public static double Sector(double radius, double degrees)
    {
        var angle = degrees * Math.PI / 180;
        var chord = angle / Math.Ceiling(angle / Math.Min(Math.PI / 36, 2 * Math.Acos(1 - (0.25 / radius))));
        return angle / 2 * radius * radius * (Math.Sin(chord) / chord);
    }

    public static double Disc(double radius) => Sector(radius, 360);

    /// <summary>A quarter of a ring from 1000 to 1240.</summary>
    public static double QuarterRing => Sector(1240, 90) - Sector(1000, 90);
}
