namespace IfcCourser.Comparing;

/// <summary>A sheet of the older issue that must be withdrawn. A sheet that several walls share bears the number of each.</summary>
/// <param name="Number">As in its title block.</param>
/// <param name="Title">Name of the wall or storey; null where it has none.</param>
/// <param name="Wall">GlobalId of the wall; null for a set-out sheet.</param>
public sealed record SupersededSheet(string Number, string? Title, string? Wall);
