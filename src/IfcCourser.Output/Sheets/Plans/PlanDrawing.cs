using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A plan, or a part of one, at any scale, and what stands beside it.</summary>
internal sealed record PlanDrawing(Func<DrawingScale, Canvas> Draw, ImmutableArray<Panel> Panels);
