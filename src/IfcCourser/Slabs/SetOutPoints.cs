using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Slabs;

/// <summary>Points of a layout by the numbers that set-out sheets, points.csv and readings.csv give them.</summary>
internal static class SetOutPoints
{
    /// <summary>In plan, model axes, mm; null where no point bears the number.</summary>
    public static Vector2? Of(Layout layout, int number) =>
        layout.SetOut.Storeys.SelectMany(storey => storey.ControlPoints.Select(point => (point.Number, point.Point))
                .Concat(storey.Bars.Select(bar => (bar.Number, bar.Point))))
            .Concat(layout.ShootingList.Select(point => (point.Number, point.Point)))
            .Where(point => point.Number == number)
            .Select(point => (Vector2?)point.Point.Plan)
            .FirstOrDefault();
}
