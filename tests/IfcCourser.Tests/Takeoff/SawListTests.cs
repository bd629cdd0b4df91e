using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

[Collection(FinishedLayouts.Collection)]
public sealed class SawListTests
{
    /// <summary>Worked by hand on units of 624 x 249 and a kerf of 2: see coursing.md for the halves; rips of 120 and 127 take 249, of 124 and 124 take 250.</summary>
    [Theory]
    [InlineData("311 311", 1)]
    [InlineData("312 312", 2)]
    [InlineData("311 311 311", 2)]
    [InlineData("206 206 206", 1)]
    [InlineData("207 207 207", 2)]
    [InlineData("500 122 500 122 300 300", 3)]
    [InlineData("624x120 624x127", 1)]
    [InlineData("624x124 624x124", 2)]
    [InlineData("311x120 311x120 624x127", 1)]
    [InlineData("312x120 312x120 624x127", 2)]
    [InlineData("311x120 311x127", 1)]
    [InlineData("311 311x120", 2)]
    public void Pieces_take_the_units_worked_by_hand(string pieces, int units)
    {
        var saw = Sawn(pieces, OffcutReuse.Wall);

        Assert.Equal(units, saw.Units.Length);
        Assert.Equal(units, saw.LeastUnits);
        Assert.Equal(pieces.Split(' ').Length - units, saw.Saved);
    }

    [Fact]
    public void The_first_piece_of_a_unit_is_the_first_that_is_laid()
    {
        var saw = Sawn("311 500 122 311", OffcutReuse.Wall);

        Assert.Equal([["C1P1", "C1P4"], ["C1P2", "C1P3"]], saw.Units.Select(unit => unit.Pieces.Select(piece => piece.Piece)));
    }

    [Theory]
    [InlineData(OffcutReuse.Wall, 4)]
    [InlineData(OffcutReuse.Storey, 3)]
    [InlineData(OffcutReuse.Job, 2)]
    public void Offcuts_go_as_far_as_they_may(OffcutReuse reuse, int units)
    {
        var wall = Wall("311");
        WallLayout Named(string id, string storey) => wall with { Wall = wall.Wall with { Identity = wall.Identity with { GlobalId = id, Storey = storey } } };
        ImmutableArray<WallLayout> walls = [Named("a", "ground"), Named("b", "ground"), Named("c", "upper"), Named("d", "attic")];

        Assert.Equal(units, Orders.With(Layout(walls), reuse).Order!.Saw.Units.Length);
    }

    [Fact]
    public void Every_sawn_piece_comes_from_one_unit_that_holds_it_and_no_more_units_go_than_pieces() => FinishedLayouts.ForAll(
        finished =>
        {
            var layout = Orders.With(finished, OffcutReuse.Job);
            var saw = layout.Order!.Saw;
            var cut = layout.Walls.SelectMany(wall => wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.Cut != Cuts.None).Select(piece => (wall.Identity.GlobalId, piece.Id)));
            Assert.Equal(cut.Order(), saw.Units.SelectMany(unit => unit.Pieces).Select(piece => (piece.Wall, piece.Piece)).Order());
            Assert.True(saw.LeastUnits <= saw.Units.Length && saw.Units.Length <= saw.Pieces);
            Assert.All(saw.Units, unit => Assert.True(CanBeSawn(unit, finished.Rules.Catalog.Kerf), $"U{unit.Number}"));
        },
        cases: 30);

    /// <summary>Rips first: strips of one height beside each other, pieces along each strip; a kerf between neighbours. Tried over all ways to share pieces among strips.</summary>
    private static bool CanBeSawn(SawnUnit unit, Length kerf)
    {
        bool Fits(List<(Length Height, Length Used)> strips, int next)
        {
            if (next == unit.Pieces.Length)
            {
                return strips.Aggregate(-kerf, (sum, strip) => sum + strip.Height + kerf) <= unit.Height;
            }

            var piece = unit.Pieces[next];
            for (var i = 0; i < strips.Count; i++)
            {
                var (height, used) = strips[i];
                if (height == piece.Height && used + kerf + piece.Length <= unit.Length)
                {
                    strips[i] = (height, used + kerf + piece.Length);
                    if (Fits(strips, next + 1))
                    {
                        return true;
                    }

                    strips[i] = (height, used);
                }
            }

            strips.Add((piece.Height, piece.Length));
            var fits = piece.Length <= unit.Length && Fits(strips, next + 1);
            strips.RemoveAt(strips.Count - 1);
            return fits;
        }

        return Fits([], 0);
    }

    private static SawList Sawn(string pieces, OffcutReuse reuse) => Orders.With(Layout([Wall(pieces)]), reuse).Order!.Saw;

    private static Layout Layout(ImmutableArray<WallLayout> walls)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        return WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromMm(1249), Length.FromMm(520), Length.FromMm(240))), rules) with { Walls = walls };
    }

    /// <summary>A wall with sawn pieces, 311 long or 624x120 long and high, one after the other.</summary>
    private static WallLayout Wall(string pieces)
    {
        var sawn = pieces.Split(' ').Select((text, i) =>
        {
            var size = text.Split('x').Select(number => Length.FromMm(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture))).ToArray();
            var (length, height) = (size[0], size.Length > 1 ? size[1] : Length.FromMm(249));
            return new Piece
            {
                Id = FormattableString.Invariant($"C1P{i + 1}"),
                Product = "unit",
                From = Length.FromMm(1000 * i),
                To = Length.FromMm(1000 * i) + length,
                Bottom = Length.FromMm(20),
                Top = Length.FromMm(20) + height,
                Cut = height < Length.FromMm(249) ? Cuts.Height : Cuts.Length,
                IsFull = false,
                Cores = [],
            };
        });
        var plain = Layout([]).Rules;
        var wall = WallSketch.LayOut(WallSketch.Straight(Length.FromMm(1249), Length.FromMm(520), Length.FromMm(240)), plain);
        return wall with { Courses = [wall.Courses[0] with { Pieces = [.. sawn] }] };
    }
}
