namespace IfcCourser.Output.Page;

/// <summary>Text that is HTML already, its values escaped.</summary>
internal readonly record struct Markup(string Text)
{
    public static readonly Markup None = new(string.Empty);

    /// <summary>A name of the model: whatever its letters, it does not turn the words around it.</summary>
    public static Markup Name(string? name) => new($"<bdi>{HtmlText.Escaped(name)}</bdi>");

    public static Markup Joined(string between, IEnumerable<Markup> parts) => new(string.Join(between, parts.Select(part => part.Text)));
}
