using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to lists, an instance's arguments among them.</summary>
internal static class ListMutations
{
    private static readonly Token _comma = new(TokenKind.Comma, ",", string.Empty);

    public static bool Empty(Draft draft, Random random) => Change(draft, random, 1, _ => []);

    public static bool Nest(Draft draft, Random random)
    {
        int[] depths = [2, 50, 150, 100_000];
        return Change(draft, random, 1, items =>
        {
            var depth = random.Of(depths);
            return [[new Token(TokenKind.Other, new string('(', depth), string.Empty), .. items[0], new Token(TokenKind.Other, new string(')', depth), string.Empty)], .. items.Skip(1)];
        });
    }

    public static bool Drop(Draft draft, Random random) => Change(draft, random, 1, items =>
    {
        items.RemoveAt(random.Next(items.Count));
        return items;
    });

    public static bool Add(Draft draft, Random random) => Change(draft, random, 1, items =>
    {
        items.Insert(random.Next(items.Count + 1), random.Of(items));
        return items;
    });

    public static bool Swap(Draft draft, Random random) => Change(draft, random, 2, items =>
    {
        var (one, other) = (random.Next(items.Count), random.Next(items.Count));
        (items[one], items[other]) = (items[other], items[one]);
        return items;
    });

    public static bool Reverse(Draft draft, Random random) => Change(draft, random, 2, items =>
    {
        items.Reverse();
        return items;
    });

    public static bool Repeat(Draft draft, Random random)
    {
        int[] times = [10, 1000, 20_000];
        return Change(draft, random, 1, items =>
        {
            var item = random.Of(items);
            return [.. items, .. Enumerable.Repeat(item, Math.Max(1, random.Of(times) / item.Length))];
        });
    }

    private static bool Change(Draft draft, Random random, int least, Func<List<Token[]>, List<Token[]>> change)
    {
        if (random.List(draft, least) is not var (open, arguments))
        {
            return false;
        }

        var items = change([.. arguments.Select(range => draft.Tokens[range].ToArray())]);
        var joined = items.SelectMany((item, i) => i == 0 ? item : [_comma, .. item]);
        var list = draft.ListAt(open);
        var close = draft.Tokens[list.End.Value - 1].Kind == TokenKind.Close ? list.End.Value - 1 : list.End.Value;
        draft.Replace((open + 1)..close, joined);
        return true;
    }
}
