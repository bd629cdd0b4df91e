using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Cases.Bodies;

/// <summary>An elevation outline, counter-clockwise, over a wall's thickness, as corners and faces that look outwards.</summary>
internal sealed record Prism(ImmutableArray<Point> Outline)
{
    /// <summary>The gable that most of the faced bodies show: eaves at 2000, ridge at 2500 in the middle.</summary>
    public static readonly Prism Gable = new([new(0, 0), new(4000, 0), new(4000, 2000), new(2000, 2500), new(0, 2000)]);

    /// <summary>x, y, z: the outline on the right face, then on the left one.</summary>
    public ImmutableArray<ImmutableArray<double>> Corners =>
    [
        .. Outline.Select(p => ImmutableArray.Create(p.X, BodyCase.Right, p.Y)),
        .. Outline.Select(p => ImmutableArray.Create(p.X, BodyCase.Left, p.Y)),
    ];

    /// <summary>Indices of corners: the right face, the left face, then one face for each edge of the outline.</summary>
    public ImmutableArray<ImmutableArray<int>> Faces
    {
        get
        {
            var n = Outline.Length;
            return
            [
                [.. Enumerable.Range(0, n)],
                [.. Enumerable.Range(n, n).Reverse()],
                .. Enumerable.Range(0, n).Select(i => ImmutableArray.Create(i, n + i, n + ((i + 1) % n), (i + 1) % n)),
            ];
        }
    }
}
