using System.Text.RegularExpressions;
using IfcCourser.Catalogs;
using IfcCourser.Output.Ids;
using IfcCourser.Walls;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Output.Tests.Ids;

public sealed class ModelToReadIdsTests
{
    /// <summary>The pattern and the reader of walls take the same names for masonry, words that rule a name out aside.</summary>
    [Theory]
    [InlineData("Masonry - Concrete Block")]
    [InlineData("RedBlock 200")]
    [InlineData("Hintermauerwerk")]
    [InlineData("aerated CONCRETE block 240")]
    [InlineData("Aerated-concrete_block")]
    [InlineData("Roadblock")]
    [InlineData("unblocked")]
    [InlineData("Stud layer")]
    [InlineData("")]
    public void ThePatternFindsWhatTheReaderFinds(string name)
    {
        foreach (var catalog in BuiltInCatalogs.Names.Select(BuiltInCatalogs.Get))
        {
            var read = NameWords.Read(catalog with { OtherWords = [] }, NameKind.Material, null, name);
            var matches = Regex.IsMatch(name, $"^{ModelToReadIds.Pattern(catalog)}$", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
            Assert.Equal(read.IsMasonry is true, matches);
        }
    }
}
