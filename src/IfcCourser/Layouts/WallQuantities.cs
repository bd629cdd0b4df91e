namespace IfcCourser.Layouts;

/// <summary>What a wall takes: areas in m2, volumes in m3, counts of pieces.</summary>
/// <param name="OpeningArea">Of the openings that interrupt the coursing.</param>
/// <param name="NetVolume">Of the masonry layer, net area times thickness.</param>
/// <param name="FullUnits">Pieces laid uncut, bought part lengths included.</param>
/// <param name="PartUnits">Pieces that are cut.</param>
/// <param name="TroughUnits">Trough units among them.</param>
/// <param name="BeamGrout">Grout of bond beams, the concrete of formed ones included, waste not counted.</param>
public sealed record WallQuantities(
    double GrossArea, double OpeningArea, double NetArea, double NetVolume, int FullUnits, int PartUnits, int TroughUnits, double BeamGrout);
