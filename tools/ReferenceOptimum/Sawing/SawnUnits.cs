using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace ReferenceOptimum.Sawing;

/// <summary>What the saw list makes of a problem.</summary>
internal static class SawnUnits
{
    /// <returns>Units sawn, how many the list says are needed at least, and whether each piece comes out of one unit that holds it.</returns>
    public static (int Units, int Least, bool IsSound) Of(SawProblem problem)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get(problem.Catalog), OpeningPolicy.Keep);
        var wall = WallSketch.LayOut(WallSketch.Straight(Length.FromMm(1249), Length.FromMm(520), rules.Catalog.Widths[0].Actual), rules);
        var pieces = problem.Pieces.Select((piece, i) => new Piece
        {
            Id = FormattableString.Invariant($"C1P{i + 1}"),
            Product = "unit",
            From = Length.Zero,
            To = new Length(piece.Length),
            Bottom = Length.Zero,
            Top = new Length(piece.Height),
            Cut = piece.Height < problem.Height ? Cuts.Height : Cuts.Length,
            IsFull = false,
            Cores = [],
        });
        var layout = WallSketch.LayOut(WallSketch.Alone(wall.Wall), rules) with { Walls = [wall with { Courses = [wall.Courses[0] with { Pieces = [.. pieces] }] }] };
        var saw = SawLists.Of(layout, OffcutReuse.Job, []);
        var sawn = saw.Units.SelectMany(unit => unit.Pieces).Select(piece => (piece.Length.Nanometres, piece.Height.Nanometres)).Order();
        return (saw.Units.Length, saw.LeastUnits, sawn.SequenceEqual(problem.Pieces.Order()) && saw.Units.All(unit => Holds(unit, problem)));
    }

    /// <summary>Rips first, strips of one height above each other, pieces along them; tried over all ways to share the pieces among strips.</summary>
    private static bool Holds(SawnUnit unit, SawProblem problem)
    {
        return Fits([], 0);

        bool Fits(ImmutableList<(long Height, long Used)> strips, int next)
        {
            if (next == unit.Pieces.Length)
            {
                return strips.Sum(strip => strip.Height + problem.Kerf) <= problem.Height + problem.Kerf;
            }

            var (length, height) = (unit.Pieces[next].Length.Nanometres + problem.Kerf, unit.Pieces[next].Height.Nanometres);
            return Enumerable.Range(0, strips.Count)
                .Where(i => strips[i].Height == height && strips[i].Used + length <= problem.Length + problem.Kerf)
                .Any(i => Fits(strips.SetItem(i, (height, strips[i].Used + length)), next + 1)) || Fits(strips.Add((height, length)), next + 1);
        }
    }
}
