using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Settings;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>Whether --only, --exclude, --storey, --movement-joint and the job file name walls that the model has: a misspelt one would empty the run or do nothing.</summary>
internal static class WallFilters
{
    private const int MostNames = 5;

    /// <summary>Table of a job file.</summary>
    private const string Phase = "[[phase]]";

    /// <summary>The fault of the first filter that matches no wall, or of all together where each does; null where all is well.</summary>
    public static Fault? Fault(ImmutableArray<IfcWallRecord> walls, RunSettings settings)
    {
        var selection = settings.Selection;
        List<WallIdentity> identities = [.. walls.Select(wall => new WallIdentity(wall.GlobalId, wall.StepId, wall.Name, wall.Storey, wall.TypeName))];
        if (identities.Count == 0)
        {
            return null;
        }

        bool MatchesNone(WallSelection one) => !identities.Exists(one.Includes);
        var idle = selection.Only.Select(pattern => (Option: "--only", Pattern: pattern))
            .Concat(selection.Exclude.Select(pattern => (Option: "--exclude", Pattern: pattern)))
            .Concat(settings.Phases.Listed.SelectMany(phase => phase.Walls).Select(pattern => (Option: Phase, Pattern: pattern)))
            .Concat(settings.MovementJoints.Select(joint => (GivenJoint.Option, Pattern: joint.Wall)))
            .Concat(settings.JobWalls.Where(wall => !wall.Embeds.IsEmpty).Select(wall => ("[[wall]] of the job file", Pattern: wall.Wall)))
            .Where(filter => MatchesNone(new WallSelection { Only = [filter.Pattern] }))
            .Select(filter => Unmatched(filter, isStorey: false))
            .Concat(selection.Storeys.Select(storey => (Option: "--storey", Pattern: storey))
                .Concat(settings.Phases.Listed.SelectMany(phase => phase.Storeys).Select(storey => (Option: Phase, Pattern: storey)))
                .Where(filter => MatchesNone(new WallSelection { Storeys = [filter.Pattern] }))
                .Select(filter => Unmatched(filter, isStorey: true)));
        return idle.FirstOrDefault() ?? (MatchesNone(selection) ? Messages.FiltersLeaveNothing() : null);

        Fault Unmatched((string Option, string Pattern) filter, bool isStorey)
        {
            var known = isStorey
                ? identities.Select(wall => wall.Storey)
                : identities.Select(wall => wall.Name).Concat(identities.Select(wall => wall.GlobalId));
            var names = known.OfType<string>().Where(name => name.Length > 0);
            return Messages.MatchesNoWall(filter.Option, filter.Pattern, isStorey, NearestName.Ranked(filter.Pattern, names).Take(MostNames));
        }
    }
}
