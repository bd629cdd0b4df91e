using CsCheck;
using IfcCourser.Cli.Batch;

namespace IfcCourser.Cli.Tests.Batch;

public sealed class ShardTests
{
    [Theory]
    [InlineData("0/3")]
    [InlineData("4/3")]
    [InlineData("1")]
    [InlineData("-1/3")]
    [InlineData("1/3/5")]
    [InlineData("a/b")]
    public void What_is_no_share_is_refused(string text) => Assert.Contains($"\"{text}\" is no share", Shard.Parse(text).Fault?.ToString(), StringComparison.Ordinal);

    [Fact]
    public void Each_work_is_in_one_share_and_no_share_has_more_than_another_by_more_than_one_work() =>
        Gen.Select(Gen.Long[0, 1000].List[0, 60], Gen.Int[1, 9]).ForAll((sizes, count) =>
        {
            var works = sizes.Select((size, i) => new LotWork($"{i}", [], size)).ToList();
            var shares = Enumerable.Range(1, count).Select(k => new Shard(k, count).Of(works)).ToList();

            Assert.Equal(works.Select(work => work.PlanKey).Order(StringComparer.Ordinal), shares.SelectMany(share => share).Select(work => work.PlanKey).Order(StringComparer.Ordinal));
            var loads = shares.Select(share => share.Sum(work => work.Size)).ToList();
            Assert.True(loads.Max() - loads.Min() <= sizes.DefaultIfEmpty(0).Max());
        });

    [Fact]
    public void Shares_do_not_depend_on_the_order_of_works()
    {
        var works = Enumerable.Range(0, 20).Select(i => new LotWork($"{i}", [], i % 4)).ToList();

        Assert.Equal(
            new Shard(2, 3).Of(works).Select(work => work.PlanKey), new Shard(2, 3).Of(works.AsEnumerable().Reverse()).Select(work => work.PlanKey), StringComparer.Ordinal);
    }
}
