using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>How packs are set down beside walls.</summary>
/// <param name="PackLength">Longer side of a pack in plan.</param>
/// <param name="PackWidth">Its other side.</param>
/// <param name="Strip">Kept clear between any wall and a pack: the mason works there.</param>
/// <param name="Reach">From the wall to the near side of its packs, at most.</param>
public sealed record StagingData(Length PackLength, Length PackWidth, Length Strip, Length Reach)
{
    /// <summary>Rows of packs beside a wall, at most.</summary>
    public const int MostRows = 20;

    /// <summary>Whether the way from strip to reach holds no more rows than <see cref="MostRows"/>: each place in them is tried.</summary>
    public bool IsNear => (Reach - Strip).Mm <= PackWidth.Mm * MostRows;

    /// <summary>Whether packs have a size, and places where they may stand.</summary>
    public bool IsSound => PackWidth > Length.Zero && PackWidth <= PackLength && Strip >= Length.Zero && Strip <= Reach && IsNear;
}
