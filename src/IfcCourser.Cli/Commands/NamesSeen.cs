using System.Collections.Immutable;
using IfcCourser.Ifc;

namespace IfcCourser.Cli.Commands;

/// <summary>What a model calls the stuff of its walls: where none is taken for masonry, its user sees why.</summary>
internal static class NamesSeen
{
    private const int MostNames = 5;

    /// <summary>Materials, else layers, of the walls given; of a wall without either, its type or the wall itself. The commonest first, five at most.</summary>
    public static IReadOnlyList<string> In(ImmutableArray<IfcWallRecord> walls) =>
    [
        .. walls.SelectMany(Names)
            .GroupBy(name => name, StringComparer.Ordinal)
            .OrderByDescending(name => name.Count()).ThenBy(name => name.Key, StringComparer.Ordinal)
            .Select(name => name.Key)
            .Take(MostNames),
    ];

    private static IEnumerable<string> Names(IfcWallRecord wall)
    {
        var layers = (wall.Material?.Layers ?? []).Select(layer => layer.Material ?? layer.Name).Where(name => !string.IsNullOrWhiteSpace(name)).ToList();
        return (layers.Count > 0 ? layers : [wall.TypeName ?? wall.Name]).OfType<string>();
    }
}
