namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A sheet of a plan, placed.</summary>
/// <param name="Number">Of the sheet: P01, or P01.2 for a part.</param>
/// <param name="Title">With the part, where it is one.</param>
internal sealed record PlanPage(string Number, string Title, SheetFit Fit);
