using System.Globalization;
using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to what refers to what.</summary>
internal static class ReferenceMutations
{
    public static bool Swap(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } one || random.Place(draft, TokenKind.Reference) is not { } other)
        {
            return false;
        }

        (draft.Tokens[one], draft.Tokens[other]) = (draft.Tokens[other], draft.Tokens[one]);
        return true;
    }

    public static bool Retarget(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } place || random.Instance(draft) is not { } instance)
        {
            return false;
        }

        Point(draft, place, draft.Tokens[instance.Start].Text);
        return true;
    }

    /// <summary>To what another reference of the same file refers to, so that kinds fit more often.</summary>
    public static bool RetargetAlike(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } place)
        {
            return false;
        }

        var type = TypeOf(draft, draft.Tokens[place].Text);
        var alike = draft.Instances().Where(instance => type is not null && TypeOf(draft, draft.Tokens[instance.Start].Text) == type).ToList();
        if (alike.Count == 0)
        {
            return false;
        }

        Point(draft, place, draft.Tokens[random.Of(alike).Start].Text);
        return true;
    }

    public static bool Dangle(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } place)
        {
            return false;
        }

        string[] nowhere = ["#0", "#999999999", "#9223372036854775807", "#99999999999999999999999", string.Create(CultureInfo.InvariantCulture, $"#{random.Next(1, 9_000_000)}")];
        Point(draft, place, random.Of(nowhere));
        return true;
    }

    public static bool Self(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } place || OwnerOf(draft, place) is not { } owner)
        {
            return false;
        }

        Point(draft, place, draft.Tokens[owner].Text);
        return true;
    }

    /// <summary>What an instance refers to refers back to it.</summary>
    public static bool Cycle(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Reference) is not { } place || OwnerOf(draft, place) is not { } owner)
        {
            return false;
        }

        var target = draft.Tokens[place].Text;
        var back = draft.Instances().Where(instance => draft.Tokens[instance.Start].Text == target)
            .SelectMany(instance => Enumerable.Range(instance.Start.Value, instance.End.Value - instance.Start.Value))
            .Where(i => draft.Tokens[i].Kind == TokenKind.Reference)
            .ToList();
        if (back.Count == 0)
        {
            return false;
        }

        Point(draft, random.Of(back), draft.Tokens[owner].Text);
        return true;
    }

    private static void Point(Draft draft, int place, string target) => draft.Tokens[place] = draft.Tokens[place].With(target);

    /// <summary>The name of the instance that a token stands in.</summary>
    private static int? OwnerOf(Draft draft, int place) => draft.Tokens.FindLastIndex(place, token => token.Kind == TokenKind.Name) is var owner and >= 0 ? owner : null;

    private static string? TypeOf(Draft draft, string name)
    {
        var place = draft.Tokens.FindIndex(token => token.Kind == TokenKind.Name && token.Text == name);
        return place < 0 || place + 2 >= draft.Tokens.Count ? null : draft.Tokens[place + 2].Text;
    }
}
