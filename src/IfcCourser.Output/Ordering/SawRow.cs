using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Ordering;

/// <summary>A piece to saw, as the mason meets it.</summary>
/// <param name="Mark">As the wall's sheet marks it.</param>
/// <param name="Unit">What it is sawn from.</param>
/// <param name="Place">Of the piece among those of its unit, from 0: later ones come from the offcut.</param>
/// <param name="UsedBy">The next piece out of the same unit; null where the offcut is left.</param>
internal sealed record SawRow(WallLayout Wall, Course Course, Piece Piece, string Mark, SawnUnit Unit, int Place, SawnPiece? UsedBy)
{
    /// <summary>Wall by wall as they go up, storey by storey, course by course, from left to right.</summary>
    public static IEnumerable<SawRow> Of(Layout layout)
    {
        var units = layout.Order!.Saw.Units.SelectMany(unit => unit.Pieces.Select((piece, i) => (piece, Unit: unit, Place: i)))
            .ToDictionary(sawn => (sawn.piece.Wall, sawn.piece.Piece));
        var walls = layout.Walls.ToDictionary(wall => wall.Identity.GlobalId, StringComparer.Ordinal);
        foreach (var wall in layout.Order.Walls.Select(group => walls[group.Name!]))
        {
            var schedule = PieceSchedule.Of(wall);
            foreach (var (course, piece) in wall.Courses.SelectMany(course => course.Pieces.Where(piece => piece.Cut != Cuts.None).Select(piece => (course, piece))))
            {
                var (_, unit, place) = units[(wall.Identity.GlobalId, piece.Id)];
                yield return new SawRow(wall, course, piece, schedule.MarkOf(piece), unit, place, place + 1 < unit.Pieces.Length ? unit.Pieces[place + 1] : null);
            }
        }
    }

    /// <summary>Of a raked piece against the bed, degrees; null of a square one.</summary>
    public double? Angle => RakeShape.Of(Piece)?.Degrees;

    /// <summary>U7 where the unit is taken for it, else that and "offcut".</summary>
    public string FromUnit => FormattableString.Invariant($"U{Unit.Number}{(Place > 0 ? " offcut" : string.Empty)}");
}
