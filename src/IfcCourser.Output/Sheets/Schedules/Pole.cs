using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>Walls of a storey whose courses end at the same heights.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Tallest">Whose courses are drawn; those of the others are among them.</param>
/// <param name="Walls">The tallest one included, by number.</param>
internal sealed record Pole(int Number, WallLayout Tallest, ImmutableArray<WallLayout> Walls)
{
    public string? Storey => Tallest.Identity.Storey;

    /// <summary>Storey by storey from below.</summary>
    public static ImmutableArray<Pole> Of(Layout layout)
    {
        var storeys = layout.Storeys.Select(storey => storey.Key).ToList();
        var poles = new List<(WallLayout Tallest, List<WallLayout> Walls)>();
        foreach (var wall in layout.Walls.OrderByDescending(wall => wall.Courses.Length))
        {
            var like = poles.FindIndex(pole => string.Equals(pole.Tallest.Identity.Storey, wall.Identity.Storey, StringComparison.Ordinal) && Holds(pole.Tallest, wall));
            if (like < 0)
            {
                poles.Add((wall, [wall]));
            }
            else
            {
                poles[like].Walls.Add(wall);
            }
        }

        return
        [
            .. poles.OrderBy(pole => storeys.IndexOf(pole.Tallest.Identity.Storey)).ThenBy(pole => pole.Walls.Min(wall => WallNumbers.Of(layout, wall)))
                .Select((pole, i) => new Pole(i + 1, pole.Tallest, [.. pole.Walls.OrderBy(wall => WallNumbers.Of(layout, wall))])),
        ];
    }

    /// <summary>Heights of courses above the level line, and of the base below it, are among those of the taller wall.</summary>
    private static bool Holds(WallLayout tall, WallLayout wall) =>
        tall.LevelLine == wall.LevelLine && tall.Courses[0].Bottom == wall.Courses[0].Bottom
        && wall.Courses.Select(course => Top(wall, course)).All(top => tall.Courses.Any(course => Top(tall, course) == top));

    private static Length Top(WallLayout wall, Course course) => course.Top - wall.LevelLine;
}
