using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>How level the top of a first course lies, beside TMS 602-16 article 3.3 F.2 (read in a trade text): 1/4 in. in 10 ft, 1/2 in. at most, each up or down.</summary>
internal static class CourseLevelness
{
    private const string Source = "TMS 602-16 3.3 F.2, read in a trade text";

    private static readonly Length _tenFeet = Length.FromInches(120);

    /// <summary>The largest difference of tops within 10 ft of one wall, and that of any top from the level; none where fewer than two blocks were read.</summary>
    public static IEnumerable<ToleranceCheck> Of(ImmutableArray<LevelledBlock> blocks)
    {
        var read = blocks.Where(block => block.Work != LevelWork.NotRead).ToList();
        if (read.Count < 2)
        {
            yield break;
        }

        var near = read.SelectMany((a, i) => read.Skip(i + 1).TakeWhile(b => b.Block.Wall == a.Block.Wall && b.Block.Piece.From - a.Block.Piece.From <= _tenFeet).Select(b => Math.Abs(a.Off - b.Off)));
        yield return new ToleranceCheck(Messages.LevelInTenFeet, near.DefaultIfEmpty(0).Max(), Length.FromInches(0.25).Mm, Source);
        yield return new ToleranceCheck(Messages.LevelAtMost, read.Max(block => Math.Abs(block.Off)), Length.FromInches(0.5).Mm, Source);
    }
}
