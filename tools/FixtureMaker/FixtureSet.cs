using System.Collections.Immutable;
using System.Text;
using FixtureMaker.Bad;
using FixtureMaker.Houses;
using FixtureMaker.Ifc;

namespace FixtureMaker;

/// <summary>Every file the maker writes: its path under the fixtures folder, with slashes, and its bytes.</summary>
internal static class FixtureSet
{
    public static ImmutableArray<(string Path, byte[] Bytes)> All() =>
    [
        .. HouseTypes.All.Select(house => ($"ifc/{house.Key}/{house.Key}.ifc", Encoding.ASCII.GetBytes(HouseFile.Write(house)))),
        .. BadFiles.All().Select(file => ($"bad/{file.Name}", file.Bytes)),
    ];
}
