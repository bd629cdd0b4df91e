using System.Text.RegularExpressions;

namespace Mutants.Step;

/// <summary>Splits a STEP file into tokens; written anew, so that no mistake of the reader under test hides here.</summary>
internal static partial class Tokenizer
{
    /// <summary>All tokens; joined they are the text again.</summary>
    public static List<Token> Split(string text)
    {
        var tokens = new List<Token>();
        var at = 0;
        while (at < text.Length)
        {
            var start = at;
            while (at < text.Length && char.IsWhiteSpace(text[at]))
            {
                at++;
            }

            var match = Pattern().Match(text, at);
            var length = at == text.Length ? 0 : match.Success && match.Index == at ? match.Length : 1;
            var word = text.Substring(at, length);
            tokens.Add(new Token(KindOf(word, text, at + length), word, text[start..at]));
            at += length;
        }

        return tokens;
    }

    private static TokenKind KindOf(string word, string text, int end) => word switch
    {
        "(" => TokenKind.Open,
        ")" => TokenKind.Close,
        "," => TokenKind.Comma,
        "$" or "*" => TokenKind.Nothing,
        ['#', _, ..] => text.AsSpan(end).TrimStart().StartsWith("=") ? TokenKind.Name : TokenKind.Reference,
        ['\'', ..] => TokenKind.Text,
        ['.', ..] when word.Length > 1 && char.IsAsciiLetter(word[1]) => TokenKind.Enumeration,
        [>= 'A' and <= 'Z', ..] => TokenKind.Keyword,
        [>= '0' and <= '9', ..] or ['-', _, ..] => TokenKind.Number,
        _ => TokenKind.Other,
    };

    [GeneratedRegex("#[0-9]+|'(?:[^']|'')*'|\\.[A-Za-z_0-9]+\\.|[A-Z][A-Z0-9_-]*|-?[0-9]+(?:\\.[0-9]*)?(?:[eE][+-]?[0-9]+)?", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Pattern();
}
