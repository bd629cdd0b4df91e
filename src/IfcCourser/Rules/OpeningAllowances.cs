namespace IfcCourser.Rules;

/// <summary>What stands between the void of a model and the masonry around it, by what fills it; other voids are masonry openings.</summary>
public sealed record OpeningAllowances(FillingAllowance Door, FillingAllowance Window);
