using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>What a mason must know of a wall that no line of the elevation says.</summary>
internal static class WallNotes
{
    /// <summary>Findings of one kind that are written out; the list of findings has them all.</summary>
    private const int MostOfAKind = 3;

    private static readonly FindingCode[] _saidAbove = [FindingCodes.OpeningMoved, FindingCodes.HeightOffCourse];

    /// <summary>What other walls of the sheet may have in common with this one.</summary>
    public static IEnumerable<string> General(WallFacts facts)
    {
        var (wall, catalog) = (facts.Wall, facts.Layout.Rules.Catalog);
        yield return SheetText.Units(facts.Text.Units);
        yield return SheetText.Viewer;
        yield return SheetText.Blocks(catalog, facts.Text, wall.Frame.Thickness);
        yield return SheetText.Bed(catalog, facts.Text, wall.Courses[0].Bottom);
        if (facts.Layout.SlabLevels.FirstOrDefault(level => string.Equals(level.Storey, wall.Identity.Storey, StringComparison.Ordinal)) is { } level)
        {
            yield return SheetText.SlabRead(level, facts.Text);
        }

        yield return SheetText.Drift(catalog, facts.Text);
        if (!wall.BondBeams.IsEmpty)
        {
            yield return SheetText.WetTroughs;
        }
    }

    /// <summary>Of this wall alone.</summary>
    public static IEnumerable<string> Own(WallFacts facts)
    {
        var (wall, catalog) = (facts.Wall, facts.Layout.Rules.Catalog);
        foreach (var change in facts.Revision is { } revision ? SheetText.Revised(revision) : [])
        {
            yield return change;
        }

        if (facts.Stretch is { } stretch)
        {
            yield return SheetText.Parted(stretch, facts.Text);
        }

        yield return SheetText.Quantities(wall.Quantities, facts.Text.Units);
        if (!wall.BondBeams.IsEmpty)
        {
            yield return SheetText.BeamQuantities(wall.Quantities, facts.Text.Units);
        }

        foreach (var note in Joints(facts))
        {
            yield return note;
        }

        foreach (var course in wall.Courses.Where(course => course.Kind == CourseKind.BondBeam || course.Top - course.Bottom != catalog.UnitHeight))
        {
            yield return SheetText.SpecialCourse(course, catalog, facts.Text);
        }

        foreach (var (opening, tag) in wall.Openings.Zip(facts.Tags).Where(pair => pair.First.Placed != pair.First.Design))
        {
            yield return SheetText.Moved(tag, opening, facts.Text);
        }

        foreach (var note in Junctions(facts))
        {
            yield return note;
        }

        foreach (var kind in wall.Findings.Where(finding => !_saidAbove.Contains(finding.Code)).GroupBy(finding => finding.Code))
        {
            foreach (var finding in kind.Take(MostOfAKind))
            {
                yield return WithTag(facts, finding);
            }

            if (kind.Skip(MostOfAKind).Any())
            {
                yield return SheetText.MoreOfAKind(kind.Key, kind.Count() - MostOfAKind);
            }
        }
    }

    private static IEnumerable<string> Joints(WallFacts facts)
    {
        var runs = HeadJoints.OffNominal(facts).ToArray();
        var nominal = facts.Layout.Rules.Catalog.HeadJoint.Nominal;
        return Enumerable.Empty<string?>()
            .Append(SheetText.HeadJoints(runs, wider: true, nominal, facts.Text))
            .Append(SheetText.HeadJoints(runs, wider: false, nominal, facts.Text))
            .OfType<string>();
    }

    /// <summary>A mason knows an opening by its tag on the sheet, not by its name in the model.</summary>
    private static string WithTag(WallFacts facts, Finding finding) => facts.Wall.Openings.Zip(facts.Tags)
        .Where(pair => string.Equals(pair.First.Opening.GlobalId, finding.At?.Opening, StringComparison.Ordinal))
        .Aggregate(finding.Message, (text, pair) => text.Replace(pair.First.Opening.Label, pair.Second, StringComparison.Ordinal));

    private static IEnumerable<string> Junctions(WallFacts facts)
    {
        var own = facts.Wall.Identity.GlobalId;
        return facts.Layout.Junctions.Where(junction => junction.Walls.Contains(own, StringComparer.Ordinal)).Where(junction => IsShown(facts, junction)).Select(junction =>
        {
            var id = junction.Walls.First(id => id != own);
            var other = facts.Layout.Walls.FirstOrDefault(wall => wall.Identity.GlobalId == id);
            var name = other is null ? id : $"{other.Identity.Name ?? SheetText.UnnamedWall} ({SheetText.WallNumber(facts.NumberOf(other))})";
            var tied = facts.Layout.Walls.FirstOrDefault(wall => wall.Identity.GlobalId == junction.Walls[^1]) ?? facts.Wall;
            var rise = Length.FromModelMm(tied.Frame.Origin.Z - facts.Wall.Frame.Origin.Z);
            return SheetText.Junction(junction, name, PlaceOf(facts, junction, other), own, facts.Text, facts.Wall.LevelLine - rise);
        });
    }

    /// <summary>Where other walls stand against this one, on the sheet that shows it; others are noted on every part of the wall.</summary>
    private static bool IsShown(WallFacts facts, JunctionLayout junction) =>
        facts.Stretch is not { } stretch || Abutments.Of(facts, junction) is not { } abutment || stretch.Shows((abutment.From + abutment.To).Mm / 2);

    private static string PlaceOf(WallFacts facts, JunctionLayout junction, WallLayout? other) =>
        junction.Kind != JunctionKind.Tee || other is null ? string.Empty
            : Abutments.Of(facts, junction) is { } abutment ? SheetText.Place(abutment, facts.Text)
            : SheetText.EndPlace(Abutments.IsAtStart(facts, other));
}
