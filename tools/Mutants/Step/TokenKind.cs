namespace Mutants.Step;

/// <summary>Kinds of tokens of ISO 10303-21, as far as mutations tell them apart.</summary>
internal enum TokenKind
{
    /// <summary><c>#12</c> that begins an instance.</summary>
    Name,

    /// <summary><c>#12</c> as a value.</summary>
    Reference,
    Number,
    Text,
    Enumeration,

    /// <summary><c>$</c> or <c>*</c>.</summary>
    Nothing,
    Open,
    Close,
    Comma,
    Keyword,

    /// <summary>Equals signs, semicolons and whatever else stands there.</summary>
    Other,
}
