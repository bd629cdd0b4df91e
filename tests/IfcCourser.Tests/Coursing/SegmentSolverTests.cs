using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

public sealed class SegmentSolverTests
{
    /// <summary>A toy catalog on a 10 mm grid, small enough to try every filling: unit 60, joint 10 (10-20), least piece 20.</summary>
    private static readonly Catalog _toy = BuiltInCatalogs.Get("aac-mm") with
    {
        UnitLength = Length.FromMm(60),
        PartLengths = [],
        HeadJoint = new LengthRange(Length.FromMm(10), Length.FromMm(10), Length.FromMm(20)),
        CutGrid = Length.FromMm(10),
        MinPiece = Length.FromMm(20),
        PreferredPiece = Length.FromMm(30),
    };

    private static readonly LayoutRules _toyRules =
        LayoutRules.For(BuiltInRuleSets.Get("none"), _toy, OpeningPolicy.Keep) with { MinPiece = _toy.MinPiece, PreferredPiece = _toy.PreferredPiece };

    /// <summary>The same with joints that may be narrower too: 20 (10-20).</summary>
    private static readonly LayoutRules _narrowing = _toyRules with
    {
        Catalog = _toy with { HeadJoint = new LengthRange(Length.FromMm(10), Length.FromMm(20), Length.FromMm(20)) },
    };

    private static readonly BondAims _aims = _toyRules.Set.Aims;

    /// <summary>Joints of any width after a cut piece are worth a search where they save a cut; so that is what they are held to.</summary>
    [Fact]
    public void The_filling_costs_as_little_as_the_best_of_all_fillings() => Gen.Select(
        Gen.Int[2, 30], Gen.Int[0, 29].Array[0, 3], Gen.Int[1, 3], Gen.Int[0, 8], Gen.Int[0, 6], Gen.Bool)
        .ForAll((cells, joints, reach, raked, least, isNarrowing) =>
        {
            var zones = joints.Select(joint => new JointZone(Length.FromMm(10 * joint), Length.FromMm(10 * reach), BondAims.Breach));
            var task = new SegmentTask(
                Length.FromMm(10 * cells),
                new SegmentEnd(_aims.CutAtJamb, Length.FromMm(raked * 10), Length.FromMm(least * 10)),
                SegmentEnd.Upright(_aims.CutAtEnd),
                [.. zones]);
            var rules = isNarrowing ? _narrowing : _toyRules;
            var cost = new PieceCosts(rules).Of(new SegmentSolver(rules, new RestTables(), new BondEffort()).Solve(task)!.Value, task);
            Assert.InRange(cost, CheapestOfAll(task, cells, rules.Catalog, isAny: true), CheapestOfAll(task, cells, rules.Catalog, isAny: false));
            Assert.True(cost - CheapestOfAll(task, cells, rules.Catalog, isAny: true) <= _aims.Cut / 2);
        });

    /// <summary>What is known already is not found again; what is cheaper is, whatever is known.</summary>
    [Fact]
    public void A_filling_is_sought_below_the_known_cost_only() => Gen.Select(
        Gen.Int[2, 40], Gen.Int[0, 39].Array[0, 4], Gen.Int[1, 3])
        .ForAll((cells, joints, reach) =>
        {
            var zones = joints.Select(joint => new JointZone(Length.FromMm(10 * joint), Length.FromMm(10 * reach), BondAims.Breach));
            var task = new SegmentTask(Length.FromMm(10 * cells), SegmentEnd.Upright(0), SegmentEnd.Upright(0), [.. zones]);
            var solver = new SegmentSolver(_toyRules, new RestTables(), new BondEffort());
            var least = new PieceCosts(_toyRules).Of(solver.Solve(task)!.Value, task);
            Assert.Null(solver.Solve(task, least));
            Assert.Equal(least, new PieceCosts(_toyRules).Of(solver.Solve(task, least + 1)!.Value, task));
        });

    [Fact]
    public void Pieces_and_joints_fill_a_segment_of_any_length_from_end_to_end() => Gen.Select(
        Gen.Int[0, BuiltInCatalogs.Names.Length - 1], Gen.Long[300_000_000, 9_000_000_000])
        .ForAll((index, nanometres) =>
        {
            var catalog = BuiltInCatalogs.Get(BuiltInCatalogs.Names[index]);
            var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep);
            var size = new Length(nanometres);
            var pieces = new SegmentSolver(rules, new RestTables(), new BondEffort()).Solve(new SegmentTask(size, SegmentEnd.Upright(0), SegmentEnd.Upright(0), []))!.Value;
            Assert.Equal(Length.Zero, pieces[0].From);
            Assert.Equal(size, pieces[^1].To);
            Assert.All(pieces, piece => Assert.True(piece.Size > Length.Zero && piece.Size <= catalog.UnitLength));
            Assert.All(pieces.Zip(pieces.Skip(1)), pair => Assert.True(catalog.HeadJoint.Contains(pair.Second.From - pair.First.To)));
        });

    /// <summary>checkvalues.csv M-AACL-10: ten units of 23 7/8 in with 1/8 in joints measure 239 7/8 in; M-EU-01: ten of 599 mm with 1 mm, 5999 mm.</summary>
    [Theory]
    [InlineData("aac-in", 239.875 * 25.4)]
    [InlineData("aac-600", 5999)]
    public void A_wall_of_exactly_ten_units_has_no_cut(string catalog, double mm)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get(catalog), OpeningPolicy.Keep);
        var fill = new SegmentSolver(rules, new RestTables(), new BondEffort()).Solve(new SegmentTask(Length.FromMm(mm), SegmentEnd.Upright(0), SegmentEnd.Upright(0), []))!.Value;
        Assert.Equal(10, fill.Length);
        Assert.All(fill, piece => Assert.Equal(rules.Catalog.UnitLength, piece.Size));
    }

    [Fact]
    public void Joints_take_up_a_small_remainder_instead_of_a_cut()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var fill = new SegmentSolver(rules, new RestTables(), new BondEffort()).Solve(new SegmentTask(Length.FromMm(6252.4), SegmentEnd.Upright(0), SegmentEnd.Upright(0), []))!.Value;
        Assert.All(fill, piece => Assert.Equal(Length.FromMm(624), piece.Size));
    }

    /// <summary>
    /// Tries every sequence of pieces and joints, with the weights spelled out anew. After a cut piece a joint is nominal, or narrower
    /// where the piece, or the last one after it, can't be shorter at its cost; or of any width.
    /// </summary>
    private static long CheapestOfAll(SegmentTask task, int cells, Catalog catalog, bool isAny)
    {
        var (narrowest, nominal) = ((int)(catalog.HeadJoint.Min.Mm / 10), (int)(catalog.HeadJoint.Nominal.Mm / 10));
        var best = long.MaxValue;
        void Lay(int start, long cost, bool isLast)
        {
            for (var length = isLast ? cells - start : 1; length <= 6 && start + length <= cells; length++)
            {
                var whole = length == 6;
                var end = start + length;
                var isRaked = start < (int)(task.Start.Raked.Mm / 10);
                var piece = cost
                    + (whole && !isRaked ? 0 : _aims.Cut)
                    + (start == 0 && length < (int)(task.Start.Least.Mm / 10) ? _aims.ShortAtRake : 0)
                    + (whole ? 0 : (length < 2 ? BondAims.Breach : length < 3 ? _aims.Short : 0)
                        + (start == 0 ? task.Start.CutCost : 0)
                        + (end == cells ? task.End.CutCost : 0));
                if (end == cells)
                {
                    best = Math.Min(best, piece);
                    continue;
                }

                for (var joint = narrowest; joint <= (whole || isAny ? 2 : nominal); joint++)
                {
                    var isFree = isAny || whole || length <= 3 || joint == nominal;
                    if (end + joint < cells && (isFree || cells - end - joint <= 3))
                    {
                        var centre = Length.FromMm((10 * end) + (5 * joint));
                        var zones = task.Zones.Where(zone => Length.Abs(zone.Centre - centre) < zone.Reach).Sum(zone => zone.Cost);
                        Lay(end + joint, piece + zones + (Math.Abs(joint - nominal) * _aims.JointStep), !isFree);
                    }
                }
            }
        }

        Lay(0, 0, isLast: false);
        return best;
    }
}
