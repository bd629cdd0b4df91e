namespace IfcCourser.Layouts;

/// <summary>
/// What more there is in a wall's coursing with its openings kept as wanted than with them moved; less where negative. Of several openings that
/// move, each counts what lies nearest to it, so that all together count what the wall costs.
/// </summary>
/// <param name="CutPieces">Pieces that are cut.</param>
/// <param name="SawCuts">Cuts: a piece cut in length and height counts twice.</param>
/// <param name="ShortPieces">Pieces under the least piece.</param>
/// <param name="ShortLaps">Pairs of joints that lap too little.</param>
public readonly record struct KeepCost(int CutPieces, int SawCuts, int ShortPieces, int ShortLaps)
{
    public static KeepCost operator +(KeepCost a, KeepCost b) =>
        new(a.CutPieces + b.CutPieces, a.SawCuts + b.SawCuts, a.ShortPieces + b.ShortPieces, a.ShortLaps + b.ShortLaps);

    public static KeepCost operator -(KeepCost a) => new(-a.CutPieces, -a.SawCuts, -a.ShortPieces, -a.ShortLaps);
}
