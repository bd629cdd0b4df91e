using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>What someone must know before bars are cast in: laps without room, couplers out of reach, starters in doorways, rules that don't apply.</summary>
internal static class BarFindings
{
    /// <summary>Of a wall.</summary>
    /// <param name="wall">With the bars of its cores.</param>
    /// <param name="walls">All of them: the first block around a corner's bar may be a neighbour's.</param>
    /// <param name="units">Of the messages.</param>
    public static IEnumerable<Finding> Of(WallLayout wall, ImmutableArray<WallLayout> walls, UnitSystem units)
    {
        foreach (var core in wall.Cores)
        {
            var (bars, place) = (core.Bars!, new FindingPlace { S = core.At, Z = core.Bottom, Core = core.Id });
            foreach (var splice in bars.Splices.Where(splice => !bars.IsCoupled && splice.To > core.Top))
            {
                yield return new Finding(FindingCodes.LapShort, Messages.LapShort(core.Id, core.Top - splice.From, splice.Size, units), place);
            }

            var notch = NotchAt(wall, core.At) ?? walls.Where(other => core.SharedWith.Contains(other.Identity.GlobalId, StringComparer.Ordinal))
                .SelectMany(other => other.CornerCores.Where(own => own.Wall == wall.Identity.GlobalId && own.Core == core.Id).Select(own => NotchAt(other, own.At))).FirstOrDefault();
            if (bars.IsCoupled && bars.Starter is not null && (notch is null || bars.Splices[0].To > core.Bottom + notch.Height))
            {
                yield return new Finding(FindingCodes.CouplerHidden, Messages.CouplerHidden(core.Id, bars.Splices[0].To - core.Bottom, units), place);
            }

            foreach (var opening in bars.Starter is null ? [] : wall.Openings.Where(opening => opening.Interrupts && opening.Opening.Model.Bottom <= core.Bottom))
            {
                var model = opening.Opening.Model;
                if (model.Left < core.At + (core.Diameter / 2) && model.Right > core.At - (core.Diameter / 2))
                {
                    yield return new Finding(FindingCodes.BarInDoorway, Messages.BarInDoorway(core.Id, opening.Opening.Name ?? opening.Opening.GlobalId), place with { Opening = opening.Opening.GlobalId });
                }
            }
        }
    }

    /// <summary>A wall whose bars came to stand elsewhere, with what is found of them now.</summary>
    public static WallLayout Again(WallLayout wall, ImmutableArray<WallLayout> walls, UnitSystem units)
    {
        FindingCode[] told = [FindingCodes.LapShort, FindingCodes.CouplerHidden, FindingCodes.BarInDoorway];
        return wall with { Findings = [.. wall.Findings.Where(finding => !told.Contains(finding.Code)), .. Of(wall, walls, units)] };
    }

    private static Notch? NotchAt(WallLayout wall, Length at) =>
        wall.Courses[0].Pieces.Select(piece => piece.Notch).OfType<Notch>().FirstOrDefault(notch => notch.From <= at && notch.To >= at);

    /// <summary>Bars that no stock length holds.</summary>
    public static IEnumerable<Finding> TooLong(IEnumerable<BarScheduleRow> rows, LayoutRules rules) => rows
        .GroupBy(row => (row.Size, row.Steel))
        .Select(bars => (Bars: bars, Stock: rules.Set.BarList.StockOf(bars.Key.Size, bars.Key.Steel)))
        .Where(bars => !bars.Stock.IsEmpty)
        .Select(bars => (bars.Bars.Key.Size, Longest: bars.Stock[^1], Marks: bars.Bars.Where(row => row.Length > bars.Stock[^1]).Select(row => row.Mark).Distinct(StringComparer.Ordinal).ToList()))
        .Where(bars => bars.Marks.Count > 0)
        .Select(bars => new Finding(FindingCodes.BarLongerThanStock, Messages.BarLongerThanStock(bars.Marks, bars.Size.Name, bars.Longest, rules.Catalog.Units)));

    /// <summary>Of the model as a whole.</summary>
    public static IEnumerable<Finding> Of(IReadOnlyCollection<WallLayout> walls, BarRule rule)
    {
        foreach (var sentence in walls.Any(wall => !wall.Cores.IsEmpty) ? rule.NotFor : [])
        {
            yield return new Finding(FindingCodes.BarsNotFor, Messages.BarsNotFor(sentence));
        }

        foreach (var given in rule.Given)
        {
            var named = walls.Where(wall => string.Equals(wall.Identity.GlobalId, given.Wall, StringComparison.Ordinal) || string.Equals(wall.Identity.Name, given.Wall, StringComparison.Ordinal)).ToList();
            if (!named.Exists(wall => wall.Cores.Any(core => core.Why.Contains(given.Why, StringComparer.Ordinal) && Length.Abs(core.At - given.At) <= given.Play)))
            {
                yield return new Finding(FindingCodes.BarNotPlaced, Messages.BarNotPlaced(given.Wall, given.Why, isKnown: named.Count > 0));
            }
        }
    }
}
