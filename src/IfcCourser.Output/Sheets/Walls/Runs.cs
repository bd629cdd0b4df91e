using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Running dimensions along the wall from its start: jambs, movement joints and abutting walls above it, bars at their foot below it.</summary>
internal static class Runs
{
    public static void Draw(Canvas canvas, WallFacts facts)
    {
        var mm = canvas.PerPaper;
        var walls = Abutments.Of(facts).SelectMany(abutment => new[] { abutment.From, abutment.To }
            .Select(at => new Station(at.Mm, SheetText.WallNumber(facts.NumberOf(abutment.Wall)) + "  ")));
        var jambs = facts.Wall.Openings.Where(opening => opening.Interrupts)
            .SelectMany(opening => new[] { opening.Placed.Left.Mm, opening.Placed.Right.Mm })
            .Concat(facts.Stretch?.After is null ? [facts.Wall.Frame.Length.Mm] : []);
        var joints = facts.Wall.MovementJoints.Select(joint => new Station(joint.At.Mm, SheetText.MovementJoint(joint, facts.Text) + "  "));
        var above = new RunningTier(DimensionAxis.Horizontal, WallFacts.Start, facts.Top + (2 * mm), facts.Top + (9 * mm), TextSide.After) { Shown = facts.Shown };
        above.Draw(canvas, facts.Text, Matches.Stations(facts).Concat(walls).Concat(joints).Concat(jambs.Select(at => new Station(at))));
        var cores = facts.Wall.Cores.Select(core => new Station(core.At.Mm, core.Id + "  "))
            .Concat(facts.Wall.CornerCores.Select(core => new Station(core.At.Mm, CornerText(facts, core) + "  "))).ToList();
        if (cores.Count == 0)
        {
            return;
        }

        var below = new RunningTier(DimensionAxis.Horizontal, WallFacts.Start, facts.Bottom - (2 * mm), facts.Bottom - (8 * mm), TextSide.Before) { Shown = facts.Shown };
        below.Draw(canvas, facts.Text, cores);
    }

    /// <summary>Such as K1 of W05, which lists it.</summary>
    private static string CornerText(WallFacts facts, CornerCore core) => SheetText.CoreOfWall(
        core.Core, facts.NumberOf(facts.Layout.Walls.First(wall => string.Equals(wall.Identity.GlobalId, core.Wall, StringComparison.Ordinal))));
}
