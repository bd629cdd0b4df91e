using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>
/// Head joints of units laid around a curve in plan: between two units they open by thickness times pitch over radius from
/// the inner to the outer face, and both ends must stay within the joint's limits.
/// </summary>
public static class CurvedJoints
{
    /// <summary>The joints that may be laid on the centre line; null where the curve is too tight.</summary>
    /// <param name="radius">Of the centre line.</param>
    public static LengthRange? On(Catalog catalog, Length radius, Length thickness)
    {
        var half = Length.FromMm(thickness.Mm * (catalog.UnitLength + catalog.HeadJoint.Max).Mm / radius.Mm / 2);
        var (least, largest) = (catalog.HeadJoint.Min + half, catalog.HeadJoint.Max - half);
        return largest - least < catalog.CutGrid ? null
            : new LengthRange(least, Length.Min(Length.Max(catalog.HeadJoint.Nominal, least), largest), largest);
    }

    /// <summary>
    /// The tightest radius of the centre line that units of a length follow, to whole millimetres; what saws can't cut finer
    /// must be left to the joints. Null where the joints have no such play.
    /// </summary>
    public static Length? LeastRadius(Catalog catalog, Length unit, Length thickness)
    {
        var play = catalog.HeadJoint.Max - catalog.HeadJoint.Min - catalog.CutGrid;
        return play > Length.Zero
            ? Length.FromMm(thickness.Mm * (unit + catalog.HeadJoint.Max).Mm / play.Mm).CeilingTo(Length.FromMm(1))
            : null;
    }
}
