using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>How far an opening's jambs move along the run; equal where its width is kept.</summary>
internal readonly record struct JambShift(Length Left, Length Right)
{
    public ElevationRect Of(ElevationRect design) => design with { Left = design.Left + Left, Right = design.Right + Right };
}
