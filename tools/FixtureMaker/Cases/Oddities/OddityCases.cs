using System.Collections.Immutable;
using System.Text;
using FixtureMaker.Design;
using FixtureMaker.Ifc;

namespace FixtureMaker.Cases.Oddities;

/// <summary>Oddities that a reader must survive: of the file, of what it states, and of openings.</summary>
internal static class OddityCases
{
    public static ImmutableArray<(string Name, byte[] Bytes)> All =>
    [
        .. FileOddities.All,
        .. StatedOddities.All.Select(oddity => (oddity.Name, Encoding.ASCII.GetBytes(oddity.Text))),
        .. OpeningOddities.All.Select(house => (house.Key, Encoding.ASCII.GetBytes(HouseFile.Write(house)))),
    ];

    /// <summary>A wall 4000 mm long and 2519 high from x = 0, its reference line in its middle, on y = 0 or another line.</summary>
    public static Wall Plain(string name, double y = 0) =>
        SmallModel.Straight(name, SmallModel.Centred, new(0, y), Heading.East, 4000, 2519);
}
