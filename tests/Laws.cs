using CsCheck;

namespace IfcCourser.Tests;

/// <summary>
/// Laws held on generated cases, which are the same in every run, so that what passes once passes everywhere.
/// With CsCheck_Iter or CsCheck_Seed in the environment the cases are drawn at random by CsCheck instead, to look for new ones;
/// a case that fails is then made smaller and named by its seed, which goes into the test as <c>seed</c>.
/// </summary>
internal static class Laws
{
    /// <summary>Whether cases are drawn at random.</summary>
    public static bool IsExploring { get; } = new[] { "CsCheck_Iter", "CsCheck_Seed", "CsCheck_Time" }
        .Any(name => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name)));

    /// <summary>Tests a law on generated cases, one after the other.</summary>
    /// <param name="gen">What the cases are drawn from.</param>
    /// <param name="law">Throws where the law does not hold.</param>
    /// <param name="cases">How many cases.</param>
    /// <param name="seed">A case of its own, tested before the others; null where there is none.</param>
    public static void ForAll<T>(this Gen<T> gen, Action<T> law, int cases = 100, string? seed = null)
    {
        if (IsExploring)
        {
            gen.Sample(law);
            return;
        }

        if (seed is not null)
        {
            gen.Sample(law, seed: seed, iter: 1, threads: 1);
        }

        var seeds = new PCG(1, 0);
        for (var number = 0; number < cases; number++)
        {
            gen.Sample(law, seed: new PCG(1, seeds.Next64()).ToString(), iter: 1, threads: 1);
        }
    }

    /// <summary><see cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/> for a law that is true or not.</summary>
    public static void ForAll<T>(this Gen<T> gen, Func<T, bool> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => Assert.True(law(given)), cases, seed);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/>
    public static void ForAll<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => law(given.Item1, given.Item2), cases, seed);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/>
    public static void ForAll<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => law(given.Item1, given.Item2, given.Item3), cases, seed);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/>
    public static void ForAll<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => law(given.Item1, given.Item2, given.Item3, given.Item4), cases, seed);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/>
    public static void ForAll<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => law(given.Item1, given.Item2, given.Item3, given.Item4, given.Item5), cases, seed);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, string?)"/>
    public static void ForAll<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> law, int cases = 100, string? seed = null) =>
        gen.ForAll(given => law(given.Item1, given.Item2, given.Item3, given.Item4, given.Item5, given.Item6), cases, seed);
}
