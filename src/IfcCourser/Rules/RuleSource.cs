using System.Collections.Immutable;

namespace IfcCourser.Rules;

/// <summary>Where values of a rule set come from.</summary>
/// <param name="Keys">Of the values, as the rule file writes them.</param>
/// <param name="Standard">Standard with edition, or the text that was read; empty for common practice.</param>
/// <param name="Clause">Clause, table or page; may be empty.</param>
public sealed record RuleSource(ImmutableArray<string> Keys, string Standard, string Clause, Certainty Certainty);
