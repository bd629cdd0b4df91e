using IfcCourser.Findings;
using IfcCourser.Ifc;

namespace IfcCourser.Walls;

/// <summary>What is worth knowing of how a model names and files its walls, once for all of them.</summary>
public static class IdentityNotes
{
    /// <summary>Notes on GlobalIds that are none, and on walls of no storey.</summary>
    public static IEnumerable<Finding> Of(IfcModel model)
    {
        var malformed = model.Walls.Where(wall => !IsGlobalId(wall.GlobalId)).ToList();
        if (malformed.Count > 0)
        {
            yield return new Finding(
                FindingCodes.GlobalIdMalformed,
                FormattableString.Invariant($"Of {model.Walls.Length} walls {malformed.Count} have GlobalIds that are none, as \"{malformed[0].GlobalId}\" of #{malformed[0].StepId}."));
        }

        var unfiled = model.Walls.Where(wall => wall.Storey is null).ToList();
        if (unfiled.Count > 0)
        {
            yield return new Finding(
                FindingCodes.NoStorey,
                FormattableString.Invariant($"Of {model.Walls.Length} walls {unfiled.Count} belong to no storey, as #{unfiled[0].StepId}."));
        }
    }

    /// <summary>22 characters of 64, the first two bits of 132 unused (ISO 16739-1, IfcGloballyUniqueId, from memory).</summary>
    private static bool IsGlobalId(string text) =>
        text.Length == 22 && text[0] is >= '0' and <= '3' && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '$');
}
