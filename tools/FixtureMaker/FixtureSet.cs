using System.Collections.Immutable;
using System.Text;
using FixtureMaker.Bad;
using FixtureMaker.Cases.Bodies;
using FixtureMaker.Cases.Junctions;
using FixtureMaker.Cases.Oddities;
using FixtureMaker.Design;
using FixtureMaker.Houses;
using FixtureMaker.Ifc;
using FixtureMaker.Survey;

namespace FixtureMaker;

/// <summary>Every file the maker writes: its path under the fixtures folder, with slashes, and its bytes.</summary>
internal static class FixtureSet
{
    public static ImmutableArray<(string Path, byte[] Bytes)> All() =>
    [
        .. HouseTypes.All.Select(house => Model(house.Key, house)),
        .. BodyCases.All.Select(house => Model("bodies", house)),
        .. JunctionCases.All.Select(house => Model("junctions", house)),
        .. OddityCases.All.Select(file => ($"ifc/oddities/{file.Name}.ifc", file.Bytes)),
        ("tutorial/yarrow-b.ifc", Encoding.ASCII.GetBytes(HouseFile.Write(Yarrow.Revised()))),
        ("survey/yarrow-slab.csv", YarrowSurvey.OfSlab()),
        ("survey/yarrow-first-course.csv", YarrowSurvey.OfFirstCourse()),
        .. BadFiles.All().Select(file => ($"bad/{file.Name}", file.Bytes)),
    ];

    private static (string Path, byte[] Bytes) Model(string folder, House house) =>
        ($"ifc/{folder}/{house.Key}.ifc", Encoding.ASCII.GetBytes(HouseFile.Write(house)));
}
