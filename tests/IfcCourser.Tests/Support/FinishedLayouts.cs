using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>
/// Layouts of the first of <see cref="WallGen.AloneOrBox"/>, each laid out once for all laws about what is finished: bonding a wall takes far longer than any such law.
/// Classes that ask for them are of one collection, so that none waits for another's.
/// </summary>
internal static class FinishedLayouts
{
    /// <summary>The collection of classes that ask for them.</summary>
    public const string Collection = "finished layouts";

    private static readonly List<Layout> _known = [];

    /// <summary>Tests a law on so many layouts, one after the other; on others where new cases are looked for (see <see cref="Laws"/>).</summary>
    public static void ForAll(Action<Layout> law, int cases) => ForAll((_, layout) => law(layout), cases);

    /// <inheritdoc cref="ForAll(Action{Layout}, int)"/>
    public static void ForAll(Action<WallModel, Layout> law, int cases)
    {
        if (Laws.IsExploring)
        {
            WallGen.AloneOrBox.ForAll(given => law(given.Model, WallSketch.LayOut(given.Model, given.Rules)), cases);
            return;
        }

        // First all of them: a law that fails is tried again on smaller walls.
        var all = new List<(WallModel Model, LayoutRules Rules)>();
        WallGen.AloneOrBox.ForAll(all.Add, cases);
        for (var number = 0; number < cases; number++)
        {
            if (number == _known.Count)
            {
                _known.Add(WallSketch.LayOut(all[number].Model, all[number].Rules));
            }

            law(all[number].Model, _known[number]);
        }
    }
}
