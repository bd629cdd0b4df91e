using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>The top of a first course as read: which blocks stand high or low.</summary>
/// <remarks>
/// Neighbours may differ by 1/16 in (1.5 mm), a course over all its walls by 1/8 in (3 mm): common practice, no source. The level is the
/// mean of the most blocks that lie within the second of each other; the others are high or low. Of two neighbours that differ too much the one further from the level is worked on.
/// </remarks>
public sealed record LevelledCourse
{
    /// <summary>mm: what differs by less does not.</summary>
    private const double Dust = 1e-6;

    public required Layout Layout { get; init; }

    public required string? Storey { get; init; }

    public required PlacedReadings Readings { get; init; }

    /// <summary>Top of the lowest first course, in the heights of the readings, mm.</summary>
    public required double Level { get; init; }

    /// <summary>In the order of the walls, from left to right.</summary>
    public required ImmutableArray<LevelledBlock> Blocks { get; init; }

    /// <summary>What neighbours may differ by.</summary>
    public required Length Step { get; init; }

    /// <summary>What all blocks may differ by.</summary>
    public required Length Range { get; init; }

    /// <summary>Figures beside standards' tolerances.</summary>
    public required ImmutableArray<ToleranceCheck> Tolerances { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    /// <param name="layout">Of the model.</param>
    /// <param name="file">Readings with the code TOP.</param>
    /// <param name="storey">Its name; null for the lowest with blocks.</param>
    public static Outcome<LevelledCourse> Of(Layout layout, ReadingsFile file, string? storey)
    {
        var found = StoreyBlocks.Of(layout, storey);
        if (!found.IsOk)
        {
            return found.Fault;
        }

        var blocks = found.Value.Blocks;
        var placed = new ReadingPlacer(file, layout, blocks).Place(ReadingCode.Top);
        if (!placed.IsOk)
        {
            return placed.Fault;
        }

        var read = Read(blocks, placed.Value);
        if (read.All(off => off is null))
        {
            return Messages.NoTopReadings(file.File);
        }

        var (step, range) = layout.Rules.Catalog.Units == UnitSystem.Inch ? (Length.FromInches(1.0 / 16), Length.FromInches(1.0 / 8)) : (Length.FromMm(1.5), Length.FromMm(3));
        var (level, low) = LevelOf([.. read.OfType<double>()], range.Mm);
        var works = Works(blocks, [.. read.Select(off => off - level)], step.Mm, low - level, range.Mm, layout.Rules.Catalog.HeadJoint.Max);
        return new LevelledCourse
        {
            Layout = layout,
            Storey = found.Value.Storey,
            Readings = placed.Value,
            Level = blocks.Min(block => block.Top) + level + placed.Value.Zero,
            Blocks = works,
            Step = step,
            Range = range,
            Tolerances = [.. CourseLevelness.Of(works, layout.Rules.Set.Tolerances, layout.Rules.Catalog.Units)],
            Findings =
            [
                .. works.Where(block => block.Work is LevelWork.Sand or LevelWork.Relay)
                    .Select(block => new Finding(
                        FindingCodes.BlockOffLevel, Messages.BlockOff(block, layout.Rules.Catalog.Units),
                        new FindingPlace { S = block.Block.Piece.From, Course = 1, Piece = block.Block.Piece.Id })),
            ],
        };
    }

    /// <summary>The mean of the most blocks that lie within the range, and the lowest of them; of several sets the one nearest to the middle block.</summary>
    internal static (double Level, double Low) LevelOf(ImmutableArray<double> offs, double range)
    {
        var sorted = offs.Sort();
        var middle = sorted[sorted.Length / 2];
        return sorted
            .Select(low => (Low: low, Blocks: sorted.Where(off => off >= low && off <= low + range + Dust).ToArray()))
            .OrderByDescending(set => set.Blocks.Length).ThenBy(set => Math.Abs(set.Blocks.Average() - middle))
            .Select(set => (set.Blocks.Average(), set.Low)).First();
    }

    /// <summary>How far each block's readings lie above its designed top in the mean; null where none lies on it.</summary>
    private static double?[] Read(ImmutableArray<FirstCourseBlock> blocks, PlacedReadings readings)
    {
        const double Beside = 5;
        return [.. blocks.Select(block =>
        {
            var on = readings.Levels.Where(reading => block.Holds(reading.Plan, Beside)).ToArray();
            return on.Length == 0 ? (double?)null : on.Average(reading => reading.Height) - readings.Zero - block.Top;
        })];
    }

    private static ImmutableArray<LevelledBlock> Works(ImmutableArray<FirstCourseBlock> blocks, ImmutableArray<double?> offs, double step, double low, double range, Length joint)
    {
        var works = offs.Select(off => off is not { } read ? LevelWork.NotRead : read > low + range + Dust ? LevelWork.Sand : read < low - Dust ? LevelWork.Relay : LevelWork.Right).ToArray();
        for (var i = 0; i + 1 < blocks.Length; i++)
        {
            // Those at both sides of a door are no neighbours.
            var isBeside = blocks[i].Wall == blocks[i + 1].Wall && blocks[i + 1].Piece.From - blocks[i].Piece.To <= joint;
            var isStep = isBeside && works[i] == LevelWork.Right && works[i + 1] == LevelWork.Right && Math.Abs(offs[i]!.Value - offs[i + 1]!.Value) > step + Dust;
            if (isStep)
            {
                var further = Math.Abs(offs[i]!.Value) >= Math.Abs(offs[i + 1]!.Value) ? i : i + 1;
                works[further] = offs[further] > 0 ? LevelWork.Sand : LevelWork.Relay;
            }
        }

        return [.. blocks.Select((block, i) => new LevelledBlock(block, offs[i] ?? 0, works[i]))];
    }
}
