using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to the file as a whole.</summary>
internal static class FileMutations
{
    public static bool CutOff(Draft draft, Random random)
    {
        var bytes = draft.Bytes;
        draft.Raw = bytes[..random.Next(bytes.Length + 1)];
        return true;
    }

    public static bool Schema(Draft draft, Random random)
    {
        string[] schemas = ["'IFC2X3'", "'IFC4'", "'IFC4X3'", "'IFC4X3_ADD2'", "'IFC2X_FINAL'", "'ifc4'", "'AUTOMOTIVE_DESIGN'", "''", "'IFC99'", "$", "'IFC4','IFC2X3'"];
        var word = draft.Tokens.FindIndex(token => token.Text == "FILE_SCHEMA");
        var place = word < 0 ? -1 : draft.Tokens.FindIndex(word, token => token.Kind == TokenKind.Text);
        if (place < 0)
        {
            return false;
        }

        draft.Tokens[place] = draft.Tokens[place].With(random.Of(schemas));
        return true;
    }

    public static bool Garble(Draft draft, Random random)
    {
        var bytes = draft.Bytes;
        for (var left = random.Next(1, 20); left > 0 && bytes.Length > 0; left--)
        {
            bytes[random.Next(bytes.Length)] = random.Next(3) switch { 0 => (byte)random.Next(256), 1 => (byte)random.Next(' ', 127), _ => random.Of("'();,#=/*$.\\\0"u8.ToArray()) };
        }

        draft.Raw = bytes;
        return true;
    }

    public static bool Twice(Draft draft, Random random)
    {
        var bytes = draft.Bytes;
        if (bytes.Length == 0)
        {
            return false;
        }

        var start = random.Next(bytes.Length);
        var end = Math.Min(bytes.Length, start + random.Next(1, 4000));
        draft.Raw = [.. bytes[..end], .. bytes[start..]];
        return true;
    }
}
