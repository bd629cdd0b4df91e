using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to single values.</summary>
internal static class ValueMutations
{
    private static readonly string[] _otherKinds =
    [
        "'text'", "''", ".T.", ".NOTDEFINED.", "$", "*", "()", "(())", "($,$)", "#1", "0.", "-17", "IFCLABEL('x')", "IFCLENGTHMEASURE(1e400)", "IFCBOOLEAN(.F.)", "\"0FF\"", "(1.,2.,3.)", "((0.,0.),(1.,0.),(1.,1.))",
    ];

    private static readonly string[] _hostile =
    [
        "'=HYPERLINK(\"http://x\",\"y\")'", "'+1+1'", "'-1+1'", "'@SUM(A1)'", "'<script>alert(1)</script>'", "'\"><img src=x onerror=alert(1)>'", "']]>'", "'&amp;<!--'",
        "'../../../etc/passwd'", "'/etc/passwd'", "'CON'", "'a\\\\b\\\\c'", "'%%c%%d%%180'", "'{\\\\fArial|b1;x}'", "'^J^M'", "'\\X2\\D83D\\X0\\'", "'\\X2\\DC00D83D\\X0\\'", "'\\X4\\0001F600\\X0\\'",
        "'\\X2\\0000\\X0\\'", "'\\X2\\FFFE\\X0\\'", "'\\X\\1B[31m'", "'\\X\\00'", "'\\X\\0A'", "'\\X\\0D\\X\\0A'", "'\\X\\08'", "'\\X2\\202E\\X0\\'", "'\\S\\'", "'\\PA\\'", "'\\X2\\'", "'\\X2\\004'", "'\\'", "'(\\)'", "'\t'", "' '", "','", "'\"'",
    ];

    public static bool Omit(Draft draft, Random random) => Change(draft, random, token => token.IsValue, _ => random.Next(2) == 0 ? "$" : "*");

    public static bool OtherKind(Draft draft, Random random) => Change(draft, random, token => token.IsValue, _ => random.Of(_otherKinds));

    public static bool LongText(Draft draft, Random random)
    {
        int[] lengths = [256, 5_000, 70_000, 1_000_000];
        return Change(draft, random, token => token.Kind == TokenKind.Text, _ => $"'{new string(random.Of("Ax. =\\".ToCharArray()), random.Of(lengths))}'");
    }

    public static bool HostileText(Draft draft, Random random) => Change(draft, random, token => token.Kind == TokenKind.Text, _ => random.Of(_hostile));

    public static bool OtherEnumeration(Draft draft, Random random) => Change(
        draft, random, token => token.Kind == TokenKind.Enumeration, text => random.Place(draft, TokenKind.Enumeration) is { } other ? draft.Tokens[other].Text : text);

    private static bool Change(Draft draft, Random random, Func<Token, bool> wanted, Func<string, string> change)
    {
        if (random.Place(draft, wanted) is not { } place)
        {
            return false;
        }

        draft.Tokens[place] = draft.Tokens[place].With(change(draft.Tokens[place].Text));
        return true;
    }
}
