using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>Writes what a survey found into its layout: the datum of the storey and the bed under each block of its first course.</summary>
public static class AppliedSurvey
{
    /// <param name="survey">Of the layout.</param>
    /// <param name="remedy">Name of the remedy taken.</param>
    public static Layout Of(SlabSurvey survey, string remedy)
    {
        var beds = survey.Beds.ToDictionary(
            bed => (bed.Block.Wall.Identity.GlobalId, bed.Block.Piece.Id), bed => new PieceBed(Length.FromMm(bed.Least), Length.FromMm(bed.Most), Length.FromMm(bed.Mean)));
        var level = new SlabLevel(
            survey.Storey, Length.FromMm(survey.Datum), survey.Readings.Heights == ReadingHeights.Bench ? null : Length.FromMm(survey.Chosen.Raised), remedy);
        return survey.Layout with
        {
            SlabLevels = [.. survey.Layout.SlabLevels.Where(other => !string.Equals(other.Storey, survey.Storey, StringComparison.Ordinal)), level],
            Walls = [.. survey.Layout.Walls.Select(wall => WithBeds(wall, beds))],
        };
    }

    private static WallLayout WithBeds(WallLayout wall, Dictionary<(string, string), PieceBed> beds) => wall.Courses.IsEmpty ? wall : wall with
    {
        Courses = wall.Courses.SetItem(0, wall.Courses[0] with
        {
            Pieces = [.. wall.Courses[0].Pieces.Select(piece => beds.TryGetValue((wall.Identity.GlobalId, piece.Id), out var bed) ? piece with { Bed = bed } : piece)],
        }),
    };
}
