using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Chance picks; null where there is nothing to pick from.</summary>
internal static class Picks
{
    public static T Of<T>(this Random random, IReadOnlyList<T> items) => items[random.Next(items.Count)];

    public static Range? Instance(this Random random, Draft draft) => draft.Instances() is { Count: > 0 } all ? random.Of(all) : null;

    public static int? Place(this Random random, Draft draft, Func<Token, bool> wanted) => draft.Places(wanted) is { Count: > 0 } all ? random.Of(all) : null;

    public static int? Place(this Random random, Draft draft, TokenKind kind) => random.Place(draft, token => token.Kind == kind);

    /// <summary>A list with at least so many arguments: the place it opens at, and its arguments.</summary>
    public static (int Open, List<Range> Arguments)? List(this Random random, Draft draft, int least)
    {
        const int Tries = 20;
        for (var i = 0; i < Tries; i++)
        {
            if (random.Place(draft, TokenKind.Open) is { } open && draft.Arguments(open) is var arguments && arguments.Count >= least)
            {
                return (open, arguments);
            }
        }

        return null;
    }
}
