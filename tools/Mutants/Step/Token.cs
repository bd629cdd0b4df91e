namespace Mutants.Step;

/// <param name="Text">As in the file; one character a byte.</param>
/// <param name="Before">Blanks before it.</param>
internal sealed record Token(TokenKind Kind, string Text, string Before)
{
    public bool IsValue => Kind is TokenKind.Reference or TokenKind.Number or TokenKind.Text or TokenKind.Enumeration or TokenKind.Nothing;

    public Token With(string text) => this with { Text = text };
}
