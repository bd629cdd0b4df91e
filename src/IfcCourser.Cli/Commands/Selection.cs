using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>Says of every wall why it was taken or not: the layer, its width, and which word stood in which name.</summary>
internal static class Selection
{
    public static void Print(Layout layout, Terminal terminal)
    {
        var units = layout.Rules.Catalog.Units;
        var laid = layout.Walls.Select(wall => (wall.Wall.Identity, Line: Messages.Taken(wall.Wall.Identity, wall.Wall.Choice, Names(wall.Wall.Choice), units)));
        var skipped = layout.Skipped.Select(wall => (wall.Identity, Line: Messages.NotTaken(wall.Identity, wall.Reason, wall.Choice, Names(wall.Choice), units)));
        foreach (var (_, line) in laid.Concat(skipped).OrderBy(wall => wall.Identity.StepId))
        {
            terminal.Step(line);
        }
    }

    /// <summary>Of a layer that is taken, the words found in its names; else every name with what was found in it.</summary>
    private static string Names(MasonryChoice? choice)
    {
        var names = choice?.Names ?? [];
        var found = names.Where(name => name.IsMasonry is true && (choice!.Layer is null || name.Layer == choice.Layer)).ToList();
        if (choice?.Thickness is not null && found.Count > 0)
        {
            return string.Join(", ", found.Select(Messages.NameFound).Distinct(StringComparer.Ordinal));
        }

        var seen = names.Where(name => name.Word is null).Select(name => name.Name).Distinct(StringComparer.Ordinal).ToList();
        var lines = names.Where(name => name.Word is not null).Select(Messages.NameFound).Concat(seen.Count == 0 ? [] : [Messages.NamesSeen(seen)]);
        return names.IsEmpty ? Messages.NoNames : string.Join(", ", lines.Distinct(StringComparer.Ordinal));
    }
}
