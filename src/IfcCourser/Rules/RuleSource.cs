using System.Collections.Immutable;

namespace IfcCourser.Rules;

/// <summary>Where values of a rule set come from.</summary>
/// <param name="Keys">Of the values, as the rule file writes them.</param>
/// <param name="Standard">Standard with edition, or the text that was read; empty for common practice.</param>
/// <param name="Clause">Clause, table or page; may be empty.</param>
public sealed record RuleSource(ImmutableArray<string> Keys, string Standard, string Clause, Certainty Certainty)
{
    /// <summary>Standard, clause and how sure, for a reader.</summary>
    public string Text
    {
        get
        {
            var text = string.Join(", ", ((string[])[Standard, Clause]).Where(part => part.Length > 0));
            return Certainty switch
            {
                Certainty.Practice => Messages.CommonPractice,
                Certainty.Derived => $"{text}, derived",
                Certainty.FromMemory => $"{text}, from memory",
                _ => $"{text}, read",
            };
        }
    }
}
