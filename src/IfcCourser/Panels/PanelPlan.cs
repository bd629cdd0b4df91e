using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>
/// Divides a stretch into panels: dynamic programming from left to right over the places where joints may stand, exact among
/// them. Places missed, excess and number of joints change only where a panel has just its longest length or a joint stands at
/// an end of a range; these places are among them, so that in these no other places would do better.
/// </summary>
internal static class PanelPlan
{
    /// <returns>The joints' centres, from left to right, and how good they are.</returns>
    public static (ImmutableArray<Length> Joints, PanelScore Score) Solve(PanelTask task)
    {
        var places = Places(task).Prepend(task.Run.From).Append(task.Run.To).ToList();
        var best = new (PanelScore Score, int Before)?[places.Count];
        best[0] = (default, -1);
        var (limits, first, middle) = (task.Limits, 0, 0);
        var longest = Length.Max(limits.Between, Length.Max(limits.First, limits.Last));
        for (var to = 1; to < places.Count; to++)
        {
            // A panel that is too long is worse than two wherever a joint can stand in it.
            while (middle + 1 < to && places[to] - places[middle + 1] >= task.Least)
            {
                middle++;
            }

            while (places[to] - places[first] > longest && places[middle] - places[first] >= task.Least)
            {
                first++;
            }

            for (var from = to == places.Count - 1 ? 0 : first; from < to; from = Math.Max(from + 1, first))
            {
                if (best[from] is { } before && task.Of(places[from], places[to]) is { } panel
                    && (best[to] is not { } known || (before.Score + panel).CompareTo(known.Score) < 0))
                {
                    best[to] = (before.Score + panel, from);
                }
            }
        }

        var joints = ImmutableArray.CreateBuilder<Length>();
        for (var at = best[^1]!.Value.Before; at > 0; at = best[at]!.Value.Before)
        {
            joints.Add(places[at]);
        }

        joints.Reverse();
        return (joints.ToImmutable(), best[^1]!.Value.Score);
    }

    /// <summary>
    /// Places for joints, rising: faces on module lines, ends of ranges, and whole numbers of longest panels from ends of
    /// ranges and of the stretch.
    /// </summary>
    public static IEnumerable<Length> Places(PanelTask task)
    {
        var (run, limits) = (task.Run, task.Limits);
        var ends = task.Free.Concat(task.Wanted).SelectMany(range => new[] { range.From, range.To })
            .Append(run.From).Append(run.To)
            .Append(run.From + limits.First).Append(run.To - limits.Last)
            .Distinct().ToList();
        var most = (int)(run.Size / limits.Between) + 1;
        var spaced = ends.SelectMany(end => Enumerable.Range(-most, (2 * most) + 1).Select(count => end + (limits.Between * count)));
        return spaced.Concat(OnLines(task))
            .Where(place => place > run.From && place < run.To && task.Free.Any(range => range.Contains(place)))
            .Distinct().Order();
    }

    private static IEnumerable<Length> OnLines(PanelTask task)
    {
        var ((start, pitch), half) = (task.Lines.Lines, task.Width / 2);
        var first = (task.Run.From - start).FloorTo(pitch) + start;
        for (var line = first; line <= task.Run.To + pitch; line += pitch)
        {
            yield return line - half;
            yield return line - task.Lines.Joint + half;
        }
    }
}
