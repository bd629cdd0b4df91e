using System.Collections.Immutable;
using System.Text;

namespace IfcCourser.Slabs;

/// <summary>A row of a CSV file (RFC 4180): cells apart by commas, semicolons or tabs.</summary>
/// <param name="Line">On which it begins, from 1.</param>
internal sealed record CsvRow(int Line, ImmutableArray<string> Cells)
{
    /// <summary>Whether all its cells are blank.</summary>
    public bool IsBlank => Cells.All(string.IsNullOrWhiteSpace);

    /// <summary>The rows of a text; lines that begin with # are comments.</summary>
    public static IEnumerable<CsvRow> Of(string text, char separator)
    {
        var (at, line) = (0, 1);
        while (at < text.Length)
        {
            var begins = line;
            if (text[at] == '#')
            {
                (at, line) = (AfterLine(text, at), line + 1);
                continue;
            }

            var cells = ImmutableArray.CreateBuilder<string>();
            do
            {
                cells.Add(Cell(text, separator, ref at, ref line));
            }
            while (at < text.Length && text[at++] == separator);
            if (at > 0 && at < text.Length && text[at - 1] == '\r' && text[at] == '\n')
            {
                at++;
            }

            line++;
            yield return new CsvRow(begins, cells.ToImmutable());
        }
    }

    /// <summary>What separates the cells of the first line that is no comment.</summary>
    public static char Separator(string text)
    {
        var header = text.Split('\n').FirstOrDefault(line => !line.StartsWith('#') && !string.IsNullOrWhiteSpace(line)) ?? string.Empty;
        return header.Contains(';', StringComparison.Ordinal) ? ';' : header.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';
    }

    private static int AfterLine(string text, int at)
    {
        var end = text.IndexOf('\n', at);
        return end < 0 ? text.Length : end + 1;
    }

    /// <summary>Reads up to the separator or the line's end.</summary>
    private static string Cell(string text, char separator, ref int at, ref int line)
    {
        var cell = new StringBuilder();
        var isQuoted = at < text.Length && text[at] == '"';
        at += isQuoted ? 1 : 0;
        while (at < text.Length)
        {
            var c = text[at];
            if (isQuoted && c == '"')
            {
                isQuoted = at + 1 < text.Length && text[at + 1] == '"';
                at += isQuoted ? 2 : 1;
                cell.Append(isQuoted ? "\"" : string.Empty);
                continue;
            }

            if (!isQuoted && (c == separator || c is '\r' or '\n'))
            {
                break;
            }

            line += c == '\n' ? 1 : 0;
            cell.Append(c);
            at++;
        }

        return cell.ToString().Trim();
    }
}
