namespace IfcCourser.Output.Sheets.Sets;

/// <summary>A sheet of a drawing set, composed when it is asked for.</summary>
/// <param name="Number">Unique in the set, such as W003 or W003 W004: the letter says what kind of sheet it is.</param>
/// <param name="Title">As in the title block.</param>
/// <param name="DocumentType">What kind of sheet it is, in words.</param>
/// <param name="Section">Storey that its bookmark stands under; null for sheets of the whole set.</param>
/// <param name="Folder">Which of the two sets of files it belongs to.</param>
/// <param name="Compose">Draws it.</param>
public sealed record SetSheet(string Number, string Title, string DocumentType, string? Section, SetFolder Folder, Func<Sheet> Compose);
