namespace IfcCourser.Output.Sheets.Plans;

/// <summary>What a plan keeps where no paper holds it with its tables at the largest scale.</summary>
internal enum PlanAim
{
    /// <summary>The scale: blocks as large as they can be, so that cuts have room for their lengths; tables go on to further sheets.</summary>
    Scale,

    /// <summary>The tables, which are read beside the plan.</summary>
    Tables,
}
