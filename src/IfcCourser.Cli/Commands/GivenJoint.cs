using IfcCourser.Findings;
using IfcCourser.Jobs;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>A movement joint that the user gives.</summary>
/// <param name="Wall">GlobalId of a wall, or a name with * and ?.</param>
/// <param name="At">Its middle, from the wall's start.</param>
internal sealed record GivenJoint(string Wall, Length At)
{
    public const string Option = "--movement-joint";

    /// <summary>Reads WALL=LENGTH; a wall's name may hold an equals sign itself.</summary>
    public static Outcome<GivenJoint> Parse(string text)
    {
        var equals = text.LastIndexOf('=');
        if (equals <= 0)
        {
            return Messages.BadJoint(text);
        }

        return LengthText.TryParse(text[(equals + 1)..], out var at, out var problem)
            ? new GivenJoint(text[..equals].Trim(), at)
            : Messages.BadLength(Option, problem);
    }

    /// <summary>The joints that a job file gives to walls.</summary>
    public static IEnumerable<GivenJoint> Of(Job job) => job.Walls.SelectMany(wall => wall.MovementJoints.Select(at => new GivenJoint(wall.Wall, at)));

    public bool IsOf(WallIdentity wall) => new WallSelection { Only = [Wall] }.Includes(wall);
}
