namespace IfcCourser.Coursing;

/// <summary>Which rows of a segment are answered first.</summary>
internal enum AnswerOrder
{
    /// <summary>The cheapest.</summary>
    Cheapest,

    /// <summary>
    /// The cheapest, and those that the wall reaches at least cost from its foot or from its top: a row that costs more may be the one that lets all the rest
    /// of the wall cost less.
    /// </summary>
    Reached,
}
