using CsCheck;
using IfcCourser.Takeoff;

namespace IfcCourser.Tests.Takeoff;

public sealed class BinPackingTests
{
    /// <summary>Sizes of sawn pieces with their kerf in a unit of 626: most more than half, some just half, some a third or less.</summary>
    private static readonly Gen<long> _size = Gen.OneOf(Gen.Const(313L), Gen.Long[300, 626], Gen.Long[100, 330], Gen.Long[20, 120]);

    [Fact]
    public void Short_lists_take_as_few_bins_as_the_best_of_all_fillings() =>
        Gen.Select(_size.Array[0, 9], Gen.Long[626, 700]).ForAll(given => BinPacking.Fill(given.Item1, given.Item2) is var plan
            && plan.Bins.Length == Fewest(given.Item1, given.Item2) && plan.Least == plan.Bins.Length);

    /// <summary>As cut lists are: few lengths, each many times.</summary>
    [Fact]
    public void Lists_of_few_sizes_take_as_few_bins_as_the_best_of_all_fillings() =>
        Gen.Select(_size.Array[1, 4], Gen.Int[0, 3].Array[1, 11])
            .Select(given => given.Item2.Select(i => given.Item1[i % given.Item1.Length]).ToArray())
            .ForAll(sizes => BinPacking.Fill(sizes, 626) is var plan && plan.Bins.Length == Fewest(sizes, 626) && plan.Least == plan.Bins.Length);

    [Fact]
    public void Every_size_lies_in_one_bin_and_no_bin_holds_too_much() => _size.Array[0, 200].ForAll(sizes =>
    {
        var plan = BinPacking.Fill(sizes, 626);
        Assert.Equal(sizes.Order(), plan.Bins.SelectMany(bin => bin).Order());
        Assert.All(plan.Bins, bin => Assert.True(bin.Sum() <= 626));
        Assert.InRange(plan.Least, (sizes.Sum() + 625) / 626, plan.Bins.Length);
    }, cases: 30);

    /// <summary>By hand: 400 + 226 and 313 + 313 fill bins of 626, 300 + 200 + 126 another.</summary>
    [Fact]
    public void A_list_worked_by_hand() => Assert.Equal(3, BinPacking.Fill([226, 313, 126, 400, 200, 313, 300], 626).Bins.Length);

    /// <summary>By hand: 313 + 313, 313 + 200 + 112, 314 + 200 + 112.</summary>
    [Fact]
    public void Halves_share_a_bin_in_the_bound_too()
    {
        var plan = BinPacking.Fill([.. Enumerable.Repeat(313L, 3), 314, 200, 200, 112, 112], 626);

        Assert.Equal((3, 3), (plan.Bins.Length, plan.Least));
    }

    /// <summary>The fewest bins, by putting each size into every open bin or a new one.</summary>
    private static int Fewest(long[] sizes, long capacity)
    {
        var (best, room) = (sizes.Length, new List<long>());
        void Put(int next)
        {
            if (room.Count >= best)
            {
                return;
            }

            if (next == sizes.Length)
            {
                best = room.Count;
                return;
            }

            for (var bin = 0; bin < room.Count; bin++)
            {
                if (room[bin] >= sizes[next])
                {
                    room[bin] -= sizes[next];
                    Put(next + 1);
                    room[bin] += sizes[next];
                }
            }

            room.Add(capacity - sizes[next]);
            Put(next + 1);
            room.RemoveAt(room.Count - 1);
        }

        Put(0);
        return best;
    }
}
