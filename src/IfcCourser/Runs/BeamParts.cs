using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Runs;

/// <summary>What of a course bars can pass: whole pieces, made trough units, and trough and formed lintels; a solid lintel, a notched or a raked piece stops them.</summary>
internal sealed class BeamParts(ImmutableArray<Lintel> lintels, ImmutableArray<MovementJoint> joints, LayoutRules rules)
{
    /// <param name="course">The course.</param>
    /// <param name="formed">The runs of the course where it is formed in place of laid; null where it is laid.</param>
    /// <returns>From left to right, those that touch together.</returns>
    public ImmutableArray<ImmutableArray<BeamPart>> Runs(Course course, ImmutableArray<Interval>? formed) => Joined(
        (formed is { } runs
            ? runs.Select(run => new BeamPart(run, null))
            : course.Pieces.Where(piece => piece.Outline is null && piece.Bottom == course.Bottom && piece.Top == course.Top)
                .Select(piece => new BeamPart(new Interval(piece.From, piece.To), piece.Id)))
        .Concat(lintels.Where(lintel => lintel.Kind != LintelKind.Solid && lintel.Bottom <= course.Bottom && lintel.Top >= course.Top)
            .Select(lintel => new BeamPart(new Interval(lintel.From, lintel.To), null, lintel.Kind == LintelKind.Formed))));

    /// <summary>Parts from left to right, those that touch together.</summary>
    public ImmutableArray<ImmutableArray<BeamPart>> Joined(IEnumerable<BeamPart> parts)
    {
        var runs = new List<ImmutableArray<BeamPart>>();
        foreach (var part in parts.OrderBy(part => part.Run.From))
        {
            if (runs.Count > 0 && runs[^1][^1] is var last && part.Run.From - last.Run.To <= rules.Catalog.HeadJoint.Max && !IsJointBetween(last.Run, part.Run))
            {
                runs[^1] = runs[^1].Add(part);
            }
            else
            {
                runs.Add([part]);
            }
        }

        return [.. runs];
    }

    /// <summary>Whether a movement joint parts two runs.</summary>
    public bool IsJointBetween(Interval left, Interval right) => joints.Any(joint => joint.At >= left.To && joint.At <= right.From);
}
