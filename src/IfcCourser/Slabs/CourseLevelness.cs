using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>How level the top of a first course lies, beside the rule set's tolerances.</summary>
internal static class CourseLevelness
{
    /// <summary>The two tops of one wall that come nearest to what they may differ by or pass it most, and the top furthest off the level; none where fewer than two blocks were read.</summary>
    public static IEnumerable<ToleranceCheck> Of(ImmutableArray<LevelledBlock> blocks, SlabTolerances tolerances, UnitSystem units)
    {
        var read = blocks.Where(block => block.Work != LevelWork.NotRead).ToList();
        if (read.Count < 2)
        {
            yield break;
        }

        if (tolerances.CourseLevel is { } table && Pairs(read, table).MaxBy(pair => pair.Differ / pair.Row.Limit.Mm) is { Row.Limit.Mm: > 0 } worst)
        {
            yield return new ToleranceCheck(
                Messages.LevelWithin(worst.Row.Within, units), worst.Differ, worst.Row.Limit.Mm, tolerances.SourceOf(SlabTolerancesReader.CourseLevel));
        }

        if (tolerances.CourseLevelMost is { } most)
        {
            yield return new ToleranceCheck(Messages.LevelAtMost, read.Max(block => Math.Abs(block.Off)), most.Mm, tolerances.SourceOf(SlabTolerancesReader.CourseLevelMost));
        }
    }

    private static IEnumerable<(double Differ, ToleranceRow Row)> Pairs(List<LevelledBlock> read, ToleranceTable table) =>
        from pair in read.SelectMany((a, i) => read.Skip(i + 1).TakeWhile(b => b.Block.Wall == a.Block.Wall).Select(b => (A: a, B: b)))
        let row = table.RowOf(Math.Abs((pair.B.Block.Piece.From - pair.A.Block.Piece.From).Mm))
        where row is not null
        select (Math.Abs(pair.A.Off - pair.B.Off), row.Value);
}
