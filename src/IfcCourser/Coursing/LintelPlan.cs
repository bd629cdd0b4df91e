using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Lintels over a wall's openings: on the first course line at or above the head, a bearing each side, the shortest
/// product of the catalog that spans, or a formed beam where none does. Openings so close that a pier would not carry
/// both bearings share one; a lintel that would leave less than the least piece to a wall end, a jamb or the next lintel
/// runs on to it.
/// </summary>
internal sealed class LintelPlan
{
    private readonly WallLines _lines;
    private readonly ImmutableArray<OpeningLayout> _openings;
    private readonly Func<CourseBand, IEnumerable<Interval>> _taken;
    private readonly LayoutRules _rules;
    private readonly Length _joint;
    private readonly ImmutableArray<Lintel>.Builder _lintels = ImmutableArray.CreateBuilder<Lintel>();
    private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();

    /// <param name="lines">The wall and its courses.</param>
    /// <param name="openings">Placed openings.</param>
    /// <param name="taken">What neighbouring walls take of a course.</param>
    /// <param name="rules">Bearing, lintel products.</param>
    public LintelPlan(
        WallLines lines, ImmutableArray<OpeningLayout> openings, Func<CourseBand, IEnumerable<Interval>> taken, LayoutRules rules)
    {
        _lines = lines;
        _openings = [.. openings.Where(opening => opening.Interrupts).OrderBy(opening => opening.Placed.Left)];
        _taken = taken;
        _rules = rules;
        _joint = rules.Catalog.HeadJoint.Nominal;
    }

    public (ImmutableArray<Lintel> Lintels, ImmutableArray<Finding> Findings) Solve()
    {
        foreach (var course in Bearers().GroupBy(bearer => bearer.First).OrderBy(group => group.Key))
        {
            foreach (var shared in Shared([.. course]))
            {
                Place(shared);
            }
        }

        RunOnToNeighbours();
        return (_lintels.ToImmutable(), _findings.ToImmutable());
    }

    /// <summary>Openings with the index of the course that carries their lintel.</summary>
    private IEnumerable<Bearer> Bearers()
    {
        foreach (var opening in _openings)
        {
            var head = opening.Placed.Top;
            var first = _lines.Bands.ToList().FindIndex(band => band.Bottom >= head);
            var top = _lines.Outline.HighestWithin(opening.Placed.Left, opening.Placed.Right);
            if (first >= 0 && _lines.Bands[first].Bottom < top && !StandsIn(_lines.Bands[first], opening.Placed))
            {
                yield return new Bearer(opening, first);
            }
            else if (top - head > _rules.Set.PartitionHeadGap)
            {
                Report(FindingCodes.LintelMissing, Messages.NoCourseForLintel(opening.Opening.Label), opening);
            }
        }
    }

    /// <summary>Whether another opening takes the place of an opening's lintel.</summary>
    private bool StandsIn(CourseBand band, ElevationRect below) =>
        OpeningsIn(band).Any(other => other.From < below.Right && other.To > below.Left);

    /// <summary>Neighbouring openings of one course, joined where the pier between them can't carry two bearings.</summary>
    private IEnumerable<ImmutableArray<Bearer>> Shared(ImmutableArray<Bearer> course)
    {
        var shared = new List<Bearer>();
        foreach (var bearer in course)
        {
            if (shared.Count > 0 && bearer.Placed.Left - shared[^1].Placed.Right < (2 * _rules.LintelBearing) + (2 * _joint) + _rules.MinPiece)
            {
                shared.Add(bearer);
                continue;
            }

            if (shared.Count > 0)
            {
                yield return [.. shared];
            }

            shared = [bearer];
        }

        if (shared.Count > 0)
        {
            yield return [.. shared];
        }
    }

    private void Place(ImmutableArray<Bearer> bearers)
    {
        var band = _lines.Bands[bearers[0].First];
        var (left, right) = (bearers[0].Placed.Left, bearers.Max(bearer => bearer.Placed.Right));
        var free = FreeRun(bearers[0].First, left, right);
        var from = Length.Max(left - _rules.LintelBearing, free.From);
        var to = Length.Min(right + _rules.LintelBearing, free.To);
        from = from - free.From < _rules.MinPiece + _joint ? free.From : from;
        to = free.To - to < _rules.MinPiece + _joint ? free.To : to;
        var level = _lines.Bands.Skip(bearers[0].First).TakeWhile(course => IsLevel(course, from, to)).ToList();
        if (level.Count == 0)
        {
            foreach (var bearer in bearers)
            {
                Report(FindingCodes.LintelMissing, Messages.NoCourseForLintel(bearer.Opening.Opening.Label), bearer.Opening);
            }

            return;
        }

        var (kind, product, courses) = Choose(bearers, level);
        var opening = bearers[0].Opening;
        _lintels.Add(new Lintel(
            FormattableString.Invariant($"L{_lintels.Count + 1}"), opening.Opening.GlobalId, kind, product,
            from, to, band.Bottom, _lines.Bands[bearers[0].First + courses - 1].Top, left - from, to - right, []));
        foreach (var bearer in bearers)
        {
            if (left - from < _rules.LintelBearing || to - right < _rules.LintelBearing)
            {
                Report(
                    FindingCodes.BearingShort,
                    Messages.BearingShort(Length.Min(left - from, to - right), _rules.LintelBearing, _rules.Catalog.Units),
                    bearer.Opening);
            }

            if (kind == LintelKind.Formed)
            {
                Report(FindingCodes.LintelFormed, WhyFormed(bearer.Placed.Width, level[0].Height), bearer.Opening);
            }
        }
    }

    private string WhyFormed(Length span, Length height) =>
        _rules.Catalog.Lintels.FirstOrDefault(lintel => lintel.MaxClearSpan >= span) is { } product
            ? Messages.LintelLacksCourse(product.Name, height, _rules.Catalog.Units)
            : Messages.LintelFormed(span, _rules.Catalog.Units);

    /// <summary>
    /// How far a lintel may reach in its courses: to the wall's ends, a neighbour's face or the next opening. The course
    /// above counts too, since at corners it is shared out the other way round.
    /// </summary>
    private Interval FreeRun(int first, Length left, Length right)
    {
        var (from, to) = (_lines.Outline.Box.Left, _lines.Outline.Box.Right);
        foreach (var band in _lines.Bands.Skip(first).Take(2))
        {
            var part = _lines.Outline.Within(new ElevationRect(_lines.Outline.Box.Left, _lines.Outline.Box.Right, band.Bottom, band.Top))
                .FirstOrDefault(part => part.Box.Left <= left && part.Box.Right >= right);
            if (part is not null)
            {
                from = Length.Max(from, LevelFrom(part, band));
                to = Length.Min(to, LevelTo(part, band));
            }

            foreach (var taken in _taken(band).Concat(OpeningsIn(band)))
            {
                from = taken.To <= left ? Length.Max(from, taken.To) : from;
                to = taken.From >= right ? Length.Min(to, taken.From) : to;
            }
        }

        return new Interval(Length.Min(from, left), Length.Max(to, right));
    }

    private IEnumerable<Interval> OpeningsIn(CourseBand band) => _openings
        .Select(opening => opening.Placed)
        .Where(other => other.Bottom < band.Top && other.Top > band.Bottom)
        .Select(other => new Interval(other.Left, other.Right));

    /// <summary>Under a rake the lintel stays where the course has its full height.</summary>
    private static Length LevelFrom(OutlinePart part, CourseBand band) => part.Points is not { } points
        ? part.Box.Left
        : points.Where(point => point.Z >= band.Top).Select(point => point.S).DefaultIfEmpty(part.Box.Left).Min();

    private static Length LevelTo(OutlinePart part, CourseBand band) => part.Points is not { } points
        ? part.Box.Right
        : points.Where(point => point.Z >= band.Top).Select(point => point.S).DefaultIfEmpty(part.Box.Right).Max();

    private (LintelKind Kind, string Product, int Courses) Choose(ImmutableArray<Bearer> bearers, List<CourseBand> level)
    {
        var clear = bearers.Max(bearer => bearer.Placed.Width);
        var whole = level.TakeWhile(band => band.Height == _rules.Catalog.UnitHeight).Count();
        var product = _rules.Catalog.Lintels.FirstOrDefault(lintel => lintel.MaxClearSpan >= clear && lintel.Height <= whole);
        if (product is not null)
        {
            return (product.Kind, product.Name, product.Height);
        }

        var wanted = checked((int)((clear / 10).CeilingTo(_rules.Catalog.CoursePitch) / _rules.Catalog.CoursePitch));
        return (LintelKind.Formed, Messages.FormedBeam, Math.Clamp(wanted, 1, level.Count));
    }

    private bool IsLevel(CourseBand band, Length from, Length to) =>
        _lines.Outline.Within(new ElevationRect(from, to, band.Bottom, band.Top)) is [{ Points: null } part] && part.Box.Width == to - from
        && !_openings.Any(other => other.Placed.Bottom < band.Top && other.Placed.Top > band.Bottom
            && other.Placed.Left < to && other.Placed.Right > from);

    /// <summary>Joins lintels' ends that leave less than the least piece between them.</summary>
    private void RunOnToNeighbours()
    {
        for (var i = 0; i < _lintels.Count; i++)
        {
            var lintel = _lintels[i];
            var next = _lintels
                .Where(other => other.From >= lintel.To && other.Bottom < lintel.Top && other.Top > lintel.Bottom)
                .OrderBy(other => other.From)
                .FirstOrDefault();
            if (next is not null && next.From - lintel.To < _rules.MinPiece + (2 * _joint))
            {
                var to = next.From - _joint;
                _lintels[i] = lintel with { To = to, BearingRight = lintel.BearingRight + (to - lintel.To) };
            }
        }
    }

    private void Report(FindingCode code, string message, OpeningLayout opening) => _findings.Add(new Finding(code, message, new FindingPlace
    {
        Opening = opening.Opening.GlobalId,
        S = opening.Placed.Left,
        Z = opening.Placed.Top,
    }));

    private sealed record Bearer(OpeningLayout Opening, int First)
    {
        public ElevationRect Placed => Opening.Placed;
    }
}
