using System.Collections.Immutable;
namespace IfcCourser.Layouts;

/// <summary>What the office says of the job: printed in title blocks and on the cover, as given.</summary>
public sealed record JobFacts
{
    public static readonly JobFacts None = new();

    /// <summary>Null where the model's project name counts.</summary>
    public string? Project { get; init; }

    public string? Client { get; init; }

    /// <summary>Who issues the drawings.</summary>
    public string? Author { get; init; }

    public string? CheckedBy { get; init; }

    /// <summary>In the order given, the latest last.</summary>
    public ImmutableArray<Revision> Revisions { get; init; } = [];
}
