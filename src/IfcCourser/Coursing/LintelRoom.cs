using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Lets lintels beside each other have room: where they would meet, the pier between is shared by halves; where less than
/// the least piece would be left between their ends, one runs on to the other.
/// </summary>
internal sealed class LintelRoom(LintelSite site, LayoutRules rules)
{
    /// <summary>No limit.</summary>
    public static readonly Interval Everywhere = new(new Length(long.MinValue), new Length(long.MaxValue));

    private readonly Length _joint = rules.Catalog.HeadJoint.Nominal;

    /// <param name="lintels">Of each lintel, how it fits within limits; null where it does not.</param>
    /// <returns>How each fits beside the others.</returns>
    public ImmutableArray<LintelFit?> Settle(ImmutableArray<Func<Interval, LintelFit?>> lintels)
    {
        var limits = Enumerable.Repeat(Everywhere, lintels.Length).ToArray();
        var fits = lintels.Select(lintel => lintel(Everywhere)).ToArray();
        while (Crowded(fits) is { } pair)
        {
            var (left, right) = (fits[pair.Left]!, fits[pair.Right]!);
            var (ofLeft, ofRight) = (limits[pair.Left], limits[pair.Right]);
            foreach (var (limitOfLeft, limitOfRight) in Ways(left, right))
            {
                limits[pair.Left] = ofLeft with { To = Length.Min(ofLeft.To, limitOfLeft) };
                limits[pair.Right] = ofRight with { From = Length.Max(ofRight.From, limitOfRight) };
                (fits[pair.Left], fits[pair.Right]) = (lintels[pair.Left](limits[pair.Left]), lintels[pair.Right](limits[pair.Right]));
                if (fits[pair.Left] is { } one && fits[pair.Right] is { } other && !AreCrowded(one, other))
                {
                    break;
                }
            }

            // Neither shares the pier: the right one is given up.
            if (fits[pair.Left] is { } last && fits[pair.Right] is { } next && AreCrowded(last, next))
            {
                fits[pair.Right] = null;
            }
        }

        return [.. fits];
    }

    private (int Left, int Right)? Crowded(LintelFit?[] fits)
    {
        for (var i = 0; i < fits.Length; i++)
        {
            for (var j = 0; j < fits.Length; j++)
            {
                if (fits[i] is { } left && fits[j] is { } right && i != j && left.Over.From < right.Over.From && AreCrowded(left, right))
                {
                    return (i, j);
                }
            }
        }

        return null;
    }

    private bool AreCrowded(LintelFit left, LintelFit right)
    {
        var gap = right.Run.From - left.Run.To;
        return left.Heights.Overlaps(right.Heights) && gap != _joint && gap < rules.MinPiece + (2 * _joint)
            && !(gap > Length.Zero && site.IsInterrupted(new Interval(left.Run.To, right.Run.From), left.Heights));
    }

    /// <summary>Limits to try, the best first: to the left lintel's end and to the right one's.</summary>
    private IEnumerable<(Length Left, Length Right)> Ways(LintelFit left, LintelFit right)
    {
        if (right.Run.From - left.Run.To > _joint)
        {
            yield return (right.Run.From - _joint, right.Run.From);
            yield return (left.Run.To, left.Run.To + _joint);
        }

        var pier = right.Over.From - left.Over.To;
        var half = left.Over.To + ((pier - _joint) / 2).FloorTo(rules.Catalog.CutGrid);
        yield return (half, half + _joint);
    }
}
