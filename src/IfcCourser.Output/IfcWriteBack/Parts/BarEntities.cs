using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Writes IfcReinforcingBar with what the bar schedule says of its mark.</summary>
internal sealed class BarEntities
{
    private readonly Addition _addition;
    private readonly GeometryWriter _geometry;
    private readonly Dictionary<string, BarScheduleRow> _rows;

    public BarEntities(Addition addition, GeometryWriter geometry, Layout layout)
    {
        (_addition, _geometry) = (addition, geometry);
        _rows = layout.BarSchedule.GroupBy(row => row.Mark, StringComparer.Ordinal).ToDictionary(rows => rows.Key, rows => rows.First(), StringComparer.Ordinal);
    }

    /// <summary>The row of a mark; null where there is none.</summary>
    public BarScheduleRow? Row(string mark) => _rows.GetValueOrDefault(mark);

    /// <summary>The last two attributes are role and surface in IFC2X3, type and surface later.</summary>
    /// <param name="role">Unique in the wall.</param>
    /// <param name="bar">Name, size, what it stands in, type and diameter.</param>
    /// <param name="length">Where the schedule has none.</param>
    public StepValue Add(WallLayout wall, string role, PartBar bar, StepValue placement, StepValue shape, Length length)
    {
        var row = Row(bar.Mark);
        var mm2 = row?.Size.Area ?? Math.PI * bar.Diameter.Mm * bar.Diameter.Mm / 4;
        return _geometry.Add(
            "IFCREINFORCINGBAR",
            Guid(wall, role),
            _addition.Owner,
            StepValue.String(bar.Mark.Length > 0 ? bar.Mark : bar.Size),
            StepValue.Omitted,
            StepValue.String(bar.Size),
            placement,
            shape,
            StepValue.String(bar.Tag),
            row is null ? StepValue.Omitted : StepValue.String(row.Steel),
            _geometry.Number(bar.Diameter),
            StepValue.Real(mm2 / 1e6 / _addition.Model.Units.AreaM2),
            _geometry.Number(row?.Length ?? length),
            StepValue.Enumeration(_addition.Model.Schema == IfcSchema.Ifc2X3 ? "MAIN" : bar.Type),
            StepValue.Enumeration(row?.Size.Kind == BarKind.PlainRod ? "PLAIN" : "TEXTURED"));
    }

    public StepValue Guid(WallLayout wall, string role) => StepValue.String(_addition.Guids.For(wall.Identity.GlobalId, role));
}
