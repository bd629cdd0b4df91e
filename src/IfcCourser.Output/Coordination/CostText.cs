using IfcCourser.Layouts;

namespace IfcCourser.Output.Coordination;

/// <summary>What it costs to keep an opening, in words.</summary>
public static class CostText
{
    /// <summary>What more there is to cut and what breaks: <c>+10 cut pieces, +1 short lap</c>; <c>nothing</c> where all is the same.</summary>
    public static string Of(KeepCost cost)
    {
        var parts = ((int Count, string One, string More)[])[(cost.CutPieces, "cut piece", "cut pieces"), (cost.ShortPieces, "short piece", "short pieces"), (cost.ShortLaps, "short lap", "short laps")];
        var told = parts.Where(part => part.Count != 0)
            .Select(part => FormattableString.Invariant($"{part.Count:+0;-0} {(Math.Abs(part.Count) == 1 ? part.One : part.More)}")).ToList();
        return told.Count == 0 ? "nothing" : string.Join(", ", told);
    }
}
