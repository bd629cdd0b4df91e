using System.Text;

namespace Mutants.Step;

/// <summary>A STEP file under change: its tokens, and where instances lie among them.</summary>
internal sealed class Draft
{
    public Draft(IEnumerable<Token> tokens)
    {
        Tokens = [.. tokens];
    }

    public List<Token> Tokens { get; private set; }

    /// <summary>Bytes that take the place of the tokens'; null where they count.</summary>
    public byte[]? Raw { get; set; }

    public byte[] Bytes => Raw ?? Encoding.Latin1.GetBytes(string.Concat(Tokens.Select(token => token.Before + token.Text)));

    /// <summary>From the # to the semicolon, in the order of the file.</summary>
    public List<Range> Instances()
    {
        var found = new List<Range>();
        for (var i = 0; i < Tokens.Count; i++)
        {
            if (Tokens[i].Kind == TokenKind.Name)
            {
                var end = Tokens.FindIndex(i, token => token.Text == ";");
                if (end < 0)
                {
                    break;
                }

                found.Add(i..(end + 1));
            }
        }

        return found;
    }

    /// <summary>Places of the tokens of a kind, header left out.</summary>
    public List<int> Places(Func<Token, bool> wanted)
    {
        var data = Math.Max(0, Tokens.FindIndex(token => token.Text == "DATA"));
        return [.. Enumerable.Range(data, Tokens.Count - data).Where(i => wanted(Tokens[i]))];
    }

    /// <summary>From the opening parenthesis at a place to its closing one.</summary>
    public Range ListAt(int open)
    {
        var depth = 0;
        for (var i = open; i < Tokens.Count; i++)
        {
            depth += Tokens[i].Kind switch { TokenKind.Open => 1, TokenKind.Close => -1, _ => 0 };
            if (depth == 0)
            {
                return open..(i + 1);
            }
        }

        return open..Tokens.Count;
    }

    /// <summary>The arguments of the list that opens at a place.</summary>
    public List<Range> Arguments(int open)
    {
        var list = ListAt(open);
        var found = new List<Range>();
        var (start, depth) = (open + 1, 0);
        for (var i = open + 1; i < list.End.Value; i++)
        {
            var isLast = i == list.End.Value - 1;
            if (isLast || (depth == 0 && Tokens[i].Kind == TokenKind.Comma))
            {
                if (i > start)
                {
                    found.Add(start..i);
                }

                start = i + 1;
            }

            depth += Tokens[i].Kind switch { TokenKind.Open => 1, TokenKind.Close => -1, _ => 0 };
        }

        return found;
    }

    public void Replace(Range range, IEnumerable<Token> with)
    {
        var (start, length) = range.GetOffsetAndLength(Tokens.Count);
        var put = with.ToList();
        Tokens = [.. Tokens.Take(start), .. put, .. Tokens.Skip(start + length)];
    }
}
