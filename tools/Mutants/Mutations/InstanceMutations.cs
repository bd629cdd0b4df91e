using System.Globalization;
using Mutants.Step;

namespace Mutants.Mutations;

/// <summary>Changes to whole instances.</summary>
internal static class InstanceMutations
{
    public static bool Delete(Draft draft, Random random)
    {
        if (random.Instance(draft) is not { } instance)
        {
            return false;
        }

        draft.Replace(instance, []);
        return true;
    }

    /// <summary>What another instance says, under this one's number too.</summary>
    public static bool SameNumber(Draft draft, Random random)
    {
        if (random.Instance(draft) is not { } one || random.Instance(draft) is not { } other)
        {
            return false;
        }

        var copy = draft.Tokens[other];
        copy[0] = copy[0].With(draft.Tokens[one.Start].Text);
        draft.Replace(one.End..one.End, copy);
        return true;
    }

    public static bool Copy(Draft draft, Random random)
    {
        if (random.Instance(draft) is not { } instance)
        {
            return false;
        }

        var copy = draft.Tokens[instance];
        copy[0] = copy[0].With(string.Create(CultureInfo.InvariantCulture, $"#{random.Next(1_000_000, int.MaxValue)}"));
        draft.Replace(instance.End..instance.End, copy);
        return true;
    }

    public static bool OtherEntity(Draft draft, Random random)
    {
        if (random.Place(draft, TokenKind.Keyword) is not { } place || random.Place(draft, TokenKind.Keyword) is not { } other)
        {
            return false;
        }

        draft.Tokens[place] = draft.Tokens[place].With(draft.Tokens[other].Text);
        return true;
    }

    public static bool SwapNumbers(Draft draft, Random random)
    {
        if (random.Instance(draft) is not { } one || random.Instance(draft) is not { } other)
        {
            return false;
        }

        (draft.Tokens[one.Start.Value], draft.Tokens[other.Start.Value]) = (draft.Tokens[other.Start], draft.Tokens[one.Start]);
        return true;
    }
}
