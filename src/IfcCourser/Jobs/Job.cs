using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Jobs;

/// <summary>A job file: what the office says of the job, and the options of its runs in one place.</summary>
/// <param name="Date">ISO 8601 date stamped everywhere; null where the model's own time stamp counts.</param>
/// <param name="Walls">What single walls take that others don't.</param>
public sealed record Job(JobFacts Facts, string? Date, JobOptions Options, ImmutableArray<JobWall> Walls)
{
    /// <summary>How the material comes.</summary>
    public JobPhases Phases { get; init; } = JobPhases.One;

    public static readonly Job None = new(JobFacts.None, null, new JobOptions(), []);
}
