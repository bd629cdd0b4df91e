namespace ReferenceOptimum.Solving;

/// <summary>
/// Weighs fillings so that prices which go their way raise most what pairs cost at least, less half the square of the way: the quadratic program of a
/// bundle method in its dual form, solved by moving weight from a pair's dearest filling to its cheapest until both cost the same.
/// </summary>
internal static class BundleWeights
{
    private const int MostRounds = 2000;
    private const int MovesOfPair = 5;

    /// <summary>Of what all pairs cost.</summary>
    private const double Tolerance = 0.005;
    private const double Dust = 1e-9;

    /// <param name="pairs">By pair its fillings.</param>
    /// <param name="all">All of them, by number.</param>
    /// <param name="stride">How far prices go.</param>
    /// <returns>What all pairs cost at most where prices have gone that way.</returns>
    public static double Settle(List<BundledFilling>[] pairs, List<BundledFilling> all, double stride)
    {
        double Cost(BundledFilling filling) => filling.Cost + (stride * filling.Slope);

        for (var (round, gap) = (0, double.PositiveInfinity); round < MostRounds && gap > Tolerance; round++)
        {
            gap = 0;
            foreach (var pair in pairs)
            {
                for (var move = 0; move < MovesOfPair; move++)
                {
                    var cheapest = pair.MinBy(Cost)!;
                    var dearest = pair.Where(filling => filling.Weight > 0).MaxBy(Cost)!;
                    var excess = Cost(dearest) - Cost(cheapest);
                    gap += move == 0 ? excess : 0;
                    if (excess < Tolerance / 500)
                    {
                        break;
                    }

                    Move(all, dearest, cheapest, excess / stride);
                }
            }
        }

        return pairs.Sum(pair => pair.Min(Cost));
    }

    private static void Move(List<BundledFilling> all, BundledFilling from, BundledFilling to, double slope)
    {
        var curve = from.Products[from.Number] + to.Products[to.Number] - (2 * from.Products[to.Number]);
        var weight = curve * from.Weight > slope + Dust ? slope / curve : from.Weight;
        weight = from.Weight - weight < Dust ? from.Weight : weight;
        from.Weight -= weight;
        to.Weight += weight;
        for (var i = 0; i < all.Count; i++)
        {
            all[i].Slope += weight * (to.Products[i] - from.Products[i]);
        }
    }
}
