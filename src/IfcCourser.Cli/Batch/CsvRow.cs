using System.Collections.Immutable;
using System.Text;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>A row of a CSV file.</summary>
/// <param name="Line">Line of the file that it begins on, from 1.</param>
internal sealed record CsvRow(int Line, ImmutableArray<string> Cells)
{
    private const char Quote = '"';

    /// <summary>The rows of a text (RFC 4180; cells trimmed, empty lines left out); the fault of a quote that is never closed.</summary>
    /// <param name="file">For messages.</param>
    public static Outcome<List<CsvRow>> Read(string text, char separator, string file)
    {
        var rows = new List<CsvRow>();
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        var (line, begins, quotedFrom) = (1, 1, 0);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            line += c == '\n' ? 1 : 0;
            if (c == Quote)
            {
                // Two quotes within quotes are one of the text.
                var isDouble = quotedFrom > 0 && i + 1 < text.Length && text[i + 1] == Quote;
                cell.Append(isDouble ? "\"" : string.Empty);
                i += isDouble ? 1 : 0;
                quotedFrom = isDouble ? quotedFrom : quotedFrom > 0 ? 0 : line;
            }
            else if (quotedFrom > 0 || (c != separator && c is not ('\n' or '\r')))
            {
                cell.Append(c);
            }
            else if (c == separator)
            {
                EndCell();
            }
            else if (c == '\n' || i + 1 == text.Length || text[i + 1] != '\n')
            {
                EndRow();
            }
        }

        EndRow();
        return quotedFrom > 0 ? Messages.QuoteLeftOpen(file, quotedFrom) : rows;

        void EndCell()
        {
            cells.Add(cell.ToString().Trim());
            cell.Clear();
        }

        void EndRow()
        {
            EndCell();
            if (cells.Any(one => one.Length > 0))
            {
                rows.Add(new CsvRow(begins, cells.ToImmutable()));
            }

            cells.Clear();
            begins = line;
        }
    }
}
