using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>
/// What is wrong with a bond and what it costs, counted from its pieces by the contract: a breach for each short piece,
/// each pair of joints that laps short, each core and course; then bearings with a joint under them; then cut pieces.
/// </summary>
internal readonly record struct BondCount(int Breaches, int Bearings, int Cuts) : IComparable<BondCount>
{
    public static BondCount Of(BondProblem problem, Bond bond)
    {
        var sizes = problem.Sizes;
        var joints = bond.Courses.Select((course, i) => Inner(course).Concat(problem.Courses[i].Fixed).ToList()).ToList();
        var shorts = bond.Courses.SelectMany(course => course).SelectMany(run => run).Count(piece => piece.Size < sizes.LeastPiece);
        var cuts = bond.Courses.Select((course, i) => course.Select((run, r) => run.Count(piece => problem.Courses[i].Runs[r].IsCut(piece, sizes))).Sum()).Sum();
        var laps = Enumerable.Range(1, joints.Count - 1).Sum(i =>
            Short(joints[i - 1], joints[i], sizes)
            + Short(problem.Courses[i - 1].Edges, joints[i], sizes)
            + Short(joints[i - 1], problem.Courses[i].Edges, sizes));
        var cores = problem.Bars.Select((bar, b) => Enumerable.Range(bar.First, bar.Last - bar.First + 1).Count(i =>
            joints[i].Concat(problem.Courses[i].Edges).Any(joint => Math.Abs(joint - bond.Bars2[b]) < 2 * sizes.Clearance))).Sum();
        var bearings = problem.Bearings.Count(bearing => joints[bearing.Course].Exists(joint => joint > bearing.From2 && joint < bearing.To2));
        return new BondCount(shorts + laps + cores, bearings, cuts);
    }

    public static BondCount operator +(BondCount a, BondCount b) => new(a.Breaches + b.Breaches, a.Bearings + b.Bearings, a.Cuts + b.Cuts);

    public override string ToString() => $"{Breaches}/{Bearings}/{Cuts}";

    public int CompareTo(BondCount other) => (Breaches, Bearings, Cuts).CompareTo((other.Breaches, other.Bearings, other.Cuts));

    /// <summary>Twice the centres of the joints between pieces of one run.</summary>
    public static IEnumerable<long> Inner(ImmutableArray<ImmutableArray<Stretch>> course) =>
        course.SelectMany(run => run.Zip(run.Skip(1), (left, right) => left.To + right.From));

    private static int Short(IEnumerable<long> lower, IEnumerable<long> upper, BondSizes sizes) =>
        lower.Sum(a => upper.Count(b => Math.Abs(a - b) < 2 * sizes.Lap));
}
