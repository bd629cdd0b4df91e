using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Houses;

/// <summary>The house types of the invented subdivision.</summary>
internal static class HouseTypes
{
    public static ImmutableArray<House> All { get; } = [Sorrel.Design(), Teasel.Design(), Yarrow.Design()];
}
