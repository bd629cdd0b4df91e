using IfcCourser.Catalogs;
using IfcCourser.Walls;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Tests.Walls.Reading;

/// <summary>Invented names as authors of several countries write them, judged by hand.</summary>
public sealed class NameWordsTests
{
    [Theory]
    [InlineData("Masonry - Concrete Block")]
    [InlineData("8\" CMU")]
    [InlineData("RedBrick_common")]
    [InlineData("440Blockwork")]
    [InlineData("Concrete block outer leaf 140")]
    [InlineData("Stone, sand-lime")]
    [InlineData("Hintermauerwerk 17,5")]
    [InlineData("Sichtmauerwerk")]
    [InlineData("Porenbetonmauerwerk PP2")]
    [InlineData("KALKSANDSTEIN")]
    [InlineData("Vormauerziegel")]
    [InlineData("Hlz 12")]
    [InlineData("Leichtbetonstein")]
    [InlineData("kalkzandsteenblokken")]
    [InlineData("CL_21_binnenmetselwerk_100mm")]
    [InlineData("gevelbaksteen rood")]
    [InlineData("Maçonnerie - parpaing 20")]
    [InlineData("Bloc béton cellulaire")]
    [InlineData("Fábrica de bloque de hormigón")]
    [InlineData("LADRILLO hueco doble")]
    [InlineData("Alvenaria de tijolo 15")]
    [InlineData("Muratura in laterizio")]
    [InlineData("Blocchi di calcestruzzo cellulare")]
    [InlineData("Teglstein 108")]
    [InlineData("Fasadtegelsten")]
    [InlineData("kevytsoraharkko")]
    [InlineData("kalkkihiekkatiili")]
    [InlineData("Bloczki z betonu komórkowego")]
    [InlineData("Zdivo z pórobetonu")]
    [InlineData("Pórusbeton falazat")]
    [InlineData("Zidărie din cărămidă")]
    [InlineData("Кладка из газобетонных блоков")]
    [InlineData("Кирпич керамический")]
    [InlineData("Gazbeton duvar")]
    public void Names_of_masonry_are_masonry(string name) => Assert.True(Read(name).IsMasonry, Read(name).ToString());

    [Theory]
    [InlineData("Mauerabdeckung Blech")]
    [InlineData("Mauerwerksabdeckung")]
    [InlineData("Mauerwerkssperre")]
    [InlineData("Porenbetonkleber")]
    [InlineData("Dachziegel")]
    [InlineData("Klinkerriemchen")]
    [InlineData("Gipskarton")]
    [InlineData("Gypsum block 100")]
    [InlineData("Glass block")]
    [InlineData("Brick slips on insulation")]
    [InlineData("Exterior - Brick on Mtl. Stud")]
    [InlineData("Wood blocking")]
    [InlineData("Block out 300x300")]
    [InlineData("Blockboard 18")]
    [InlineData("gipsblokken 70")]
    [InlineData("Bloc-porte")]
    [InlineData("Brique de verre")]
    [InlineData("Bloque de yeso")]
    [InlineData("Mattonelle 20x20")]
    [InlineData("Kattotiili")]
    [InlineData("Taktegl")]
    [InlineData("Tynk silikatowy")]
    [InlineData("Оконный блок")]
    [InlineData("Стеклоблок")]
    [InlineData("Metal - Stud Layer")]
    [InlineData("Concrete - Cast In Situ")]
    [InlineData("Stahlbeton C25/30")]
    [InlineData("beton_C20/25")]
    [InlineData("Default Wall")]
    [InlineData("Basic Wall:Outside wall")]
    [InlineData("Stucco")]
    [InlineData("Roadblocks")]
    public void Names_of_other_stuff_are_not(string name) => Assert.NotEqual(true, Read(name).IsMasonry);

    [Fact]
    public void A_word_is_told_with_the_name_it_stands_in() =>
        Assert.Equal(new NameRead(NameKind.Type, null, "Hintermauerwerk", "*mauerwerk", true), NameWords.Read(Catalog, NameKind.Type, null, "Hintermauerwerk"));

    /// <summary>A word that another one rules out, or that the other words rule out, would never be heard.</summary>
    [Fact]
    public void Every_word_of_the_lists_does_what_its_list_says()
    {
        Assert.All(Catalog.MasonryWords, word => Assert.True(Read(word.TrimStart('*')).IsMasonry, word));
        Assert.All(Catalog.OtherWords, word => Assert.False(Read("block " + word.TrimStart('*')).IsMasonry, word));
    }

    private static Catalog Catalog => BuiltInCatalogs.Get("aac-mm");

    private static NameRead Read(string name) => NameWords.Read(Catalog, NameKind.Material, 1, name);
}
