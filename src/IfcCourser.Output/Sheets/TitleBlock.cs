namespace IfcCourser.Output.Sheets;

/// <summary>
/// Data fields of a title block (ISO 7200:2004). The mandatory ones come first; what the run does not know is empty
/// and left for the office to fill in.
/// </summary>
public sealed record TitleBlock
{
    public required string LegalOwner { get; init; }

    public required string IdentificationNumber { get; init; }

    /// <summary>ISO 8601.</summary>
    public required string DateOfIssue { get; init; }

    /// <summary>Sheet number and number of sheets, such as 3/12.</summary>
    public required string SheetNumber { get; init; }

    public required string Title { get; init; }

    public required string ApprovalPerson { get; init; }

    public required string Creator { get; init; }

    public required string DocumentType { get; init; }

    public required string Revision { get; init; }

    public required string SupplementaryTitle { get; init; }

    public required string DocumentStatus { get; init; }

    /// <summary>Not a field of the standard: what is built.</summary>
    public required string Project { get; init; }

    /// <summary>Not a field of the standard: for whom it is built.</summary>
    public required string Client { get; init; }

    public required string Scale { get; init; }

    public required string PaperSize { get; init; }
}
