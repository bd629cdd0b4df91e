using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>Where a wall has room for movement joints: clear of openings, lintels' bearings and walls that stand against it.</summary>
internal sealed class JointRoom(Length thickness, ImmutableArray<OpeningLayout> openings, ImmutableArray<MetWall> met, LayoutRules rules, MovementJointRule rule)
{
    private readonly Length _half = rule.Width / 2;

    /// <summary>Places that the rules allow: joints keep the rules' distance from openings and leave what a lintel's end and a pier need.</summary>
    /// <param name="run">A stretch of the run; at its ends a least pier is kept.</param>
    public ImmutableArray<Interval> Allowed(Interval run) => Without(
        new Interval(run.From + rules.Catalog.LeastPier + _half, run.To - rules.Catalog.LeastPier - _half),
        openings.Select(opening => Around(opening, Clear(opening))));

    /// <summary>Places where a joint can stand at all: not in an opening nor through a lintel.</summary>
    /// <param name="run">The wall's run.</param>
    public ImmutableArray<Interval> Possible(Interval run) => Without(
        new Interval(run.From + rules.MinPiece + _half, run.To - rules.MinPiece - _half),
        openings.Select(opening => Around(opening, LintelReach(opening))));

    /// <summary>Ranges beside wide openings that each want a joint.</summary>
    /// <param name="run">A stretch of the run; where its end lies in a range, none is wanted there.</param>
    public IEnumerable<Interval> Wanted(Interval run)
    {
        if (rule.WideOpenings is not { } wide)
        {
            return [];
        }

        return openings.Where(opening => opening.Placed.Width >= wide.From).SelectMany(opening =>
        {
            var (near, placed) = (Clear(opening) + _half, opening.Placed);
            var far = Length.Max(near, wide.Within + _half);
            return new[] { new Interval(placed.Left - far, placed.Left - near), new Interval(placed.Right + near, placed.Right + far) };
        }).Where(range => range.From > run.From && range.To < run.To);
    }

    /// <summary>How far from an opening joints are put.</summary>
    private Length Clear(OpeningLayout opening) => Length.Max(
        Length.Max(rule.FromJamb, rules.Catalog.LeastPier), LintelReach(opening) + rules.Catalog.HeadJoint.Nominal + rules.MinPiece);

    /// <summary>How far a lintel in the middle over an opening reaches beyond its jambs.</summary>
    private Length LintelReach(OpeningLayout opening)
    {
        var (lintel, width) = (LintelChoice.Serving(opening.Placed.Width, thickness, rules).FirstOrDefault(), opening.Placed.Width);
        var bearing = LintelChoice.BearingOf(lintel, rules);
        var length = lintel?.Lengths.Where(length => length >= width + (bearing * 2)).DefaultIfEmpty(Length.Zero).Min() ?? Length.Zero;
        return Length.Max(bearing, (length - width) / 2);
    }

    private Interval Around(OpeningLayout opening, Length clear) =>
        new(opening.Placed.Left - clear - _half, opening.Placed.Right + clear + _half);

    private ImmutableArray<Interval> Without(Interval run, IEnumerable<Interval> taken)
    {
        var free = ImmutableArray.CreateBuilder<Interval>();
        var (clear, from) = (rules.MinPiece + _half, run.From);
        foreach (var range in taken.Concat(met.Select(wall => new Interval(wall.Place.From - clear, wall.Place.To + clear))).OrderBy(range => range.From))
        {
            if (Length.Min(range.From, run.To) >= from)
            {
                free.Add(new Interval(from, Length.Min(range.From, run.To)));
            }

            from = Length.Max(from, range.To);
        }

        if (from <= run.To)
        {
            free.Add(new Interval(from, run.To));
        }

        return free.ToImmutable();
    }
}
