using System.Collections.Immutable;
using FixtureMaker.Ifc;

namespace FixtureMaker.Design;

/// <summary>A wall as an architect would model it. The reference line starts at <see cref="Start"/> (plan, model axes)
/// and runs towards <see cref="Heading"/>; the axis goes from <see cref="AxisFrom"/> to <see cref="AxisTo"/> along it.</summary>
internal sealed record Wall(string Name, BuildUp BuildUp, Point Start, Heading Heading, Body Body)
{
    public WallEntity Entity { get; init; }

    public required double AxisFrom { get; init; }

    public required double AxisTo { get; init; }

    /// <summary>Whether the file has the axis.</summary>
    public bool HasAxis { get; init; } = true;

    public bool IsExternal { get; init; }

    public bool IsLoadBearing { get; init; }

    public bool HasQuantities { get; init; }

    public ImmutableArray<Opening> Openings { get; init; } = [];

    /// <summary>Writes what a case has beside its wall.</summary>
    public Action<ModelFile, WrittenWall>? Beside { get; init; }
}
