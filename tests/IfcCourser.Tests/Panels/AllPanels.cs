using System.Collections.Immutable;
using IfcCourser.Panels;
using IfcCourser.Units;

namespace IfcCourser.Tests.Panels;

/// <summary>Exhaustive search for movement joints: every set of places is tried, and judged by what the rules say in words.</summary>
internal static class AllPanels
{
    /// <param name="task">The stretch.</param>
    /// <param name="places">Where joints may stand, rising.</param>
    public static PanelScore Best(PanelTask task, ImmutableArray<Length> places)
    {
        PanelScore? best = null;
        for (var set = 0; set < 1 << places.Length; set++)
        {
            var joints = places.Where((_, i) => (set >> i & 1) == 1).ToList();
            if (Score(task, joints) is { } score && (best is not { } known || score.CompareTo(known) < 0))
            {
                best = score;
            }
        }

        return best!.Value;
    }

    private static PanelScore? Score(PanelTask task, List<Length> joints)
    {
        var ends = joints.Prepend(task.Run.From).Append(task.Run.To).ToList();
        var panels = ends.Zip(ends.Skip(1), (from, to) => to - from).ToList();
        if (joints.Count > 0 && panels.Exists(panel => panel < task.Least))
        {
            return null;
        }

        Length Longest(int panel) => joints.Count == 0 ? task.Limits.Whole
            : panel == 0 ? task.Limits.First
            : panel == joints.Count ? task.Limits.Last
            : task.Limits.Between;
        var (start, pitch, head) = (task.Lines.Lines.Start.Nanometres, task.Lines.Lines.Pitch.Nanometres, task.Lines.Joint.Nanometres);
        bool IsOnLine(long masonryStart) => (masonryStart - start) % pitch == 0;
        var half = task.Width.Nanometres / 2;
        return new PanelScore(
            task.Wanted.Count(wanted => !joints.Exists(wanted.Contains)),
            new Length(panels.Select((panel, i) => Math.Max(0, (panel - Longest(i)).Nanometres)).Sum()),
            joints.Count,
            joints.Sum(joint => (IsOnLine(joint.Nanometres + half) ? 0 : 1) + (IsOnLine(joint.Nanometres - half + head) ? 0 : 1)),
            panels.Aggregate((Int128)0, (sum, panel) => sum + ((Int128)panel.Nanometres * panel.Nanometres)));
    }
}
