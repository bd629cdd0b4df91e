namespace IfcCourser.Output.Bcf;

/// <summary>A comment on a topic; dates as they are written (xs:dateTime).</summary>
/// <param name="Text">Null where it only points to a viewpoint.</param>
/// <param name="Viewpoint">GUID of the viewpoint it is about.</param>
public sealed record BcfComment(string Guid, string Date, string Author, string? Text, string? Viewpoint, string? ModifiedDate = null, string? ModifiedAuthor = null);
