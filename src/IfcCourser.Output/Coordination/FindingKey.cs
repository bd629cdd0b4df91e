using IfcCourser.Layouts;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Coordination;

/// <summary>What a finding is recognised by from one issue of a model to the next: what it is about and its code, not its place.</summary>
/// <param name="Project">GlobalId of the project; empty where the model has none.</param>
/// <param name="Wall">GlobalId of the wall, or of several with blanks between them; empty for the model as a whole.</param>
/// <param name="Opening">GlobalId of the opening; empty where it is about none.</param>
/// <param name="Code">The finding's code.</param>
public readonly record struct FindingKey(string Project, string Wall, string Opening, string Code) : IComparable<FindingKey>
{
    public static FindingKey Of(ModelFacts model, WallFinding listed) => new(
        model.ProjectId ?? string.Empty,
        listed.Wall?.GlobalId ?? string.Join(' ', listed.Finding.At?.Walls ?? []),
        listed.Finding.At?.Opening ?? string.Empty,
        listed.Finding.Code.Id);

    public int CompareTo(FindingKey other)
    {
        foreach (var (mine, theirs) in ((string, string)[])[(Project, other.Project), (Wall, other.Wall), (Opening, other.Opening), (Code, other.Code)])
        {
            if (string.CompareOrdinal(mine, theirs) is not 0 and var order)
            {
                return order;
            }
        }

        return 0;
    }
}
