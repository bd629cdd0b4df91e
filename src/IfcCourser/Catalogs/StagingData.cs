using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>How packs are set down beside walls.</summary>
/// <param name="PackLength">Longer side of a pack in plan.</param>
/// <param name="PackWidth">Its other side.</param>
/// <param name="Strip">Kept clear between any wall and a pack: the mason works there.</param>
/// <param name="Reach">From the wall to the near side of its packs, at most.</param>
public sealed record StagingData(Length PackLength, Length PackWidth, Length Strip, Length Reach);
