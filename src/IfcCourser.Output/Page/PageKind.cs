namespace IfcCourser.Output.Page;

/// <summary>Which page is written.</summary>
public enum PageKind
{
    /// <summary>report.html: everything a run decided.</summary>
    Report,

    /// <summary>findings.html: what the designer is asked, openings first.</summary>
    Findings,
}
