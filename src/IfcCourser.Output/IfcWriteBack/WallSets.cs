using System.Numerics;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Step21;
using IfcCourser.Walls;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>What the sets of walls and openings hold.</summary>
internal static class WallSets
{
    public static void Skipped(SetWriter sets, SkippedWall wall) => sets.PropertySet(
        wall.Identity.GlobalId,
        SetNames.Coursing,
        [wall.Identity.StepId],
        sets.Property("Status", SetWriter.Label("skipped")),
        sets.Property("Reason", SetWriter.Identifier(wall.Reason.Code.Id)),
        sets.Property("ReasonText", SetWriter.Text(wall.Reason.Message)));

    public static void Coursed(SetWriter sets, WallLayout wall, LayoutRules rules)
    {
        sets.PropertySet(
            wall.Identity.GlobalId, SetNames.Coursing, [wall.Identity.StepId], [.. Coursing(sets, wall, rules), .. Findings(sets, wall)]);
        sets.QuantitySet(
            wall.Identity.GlobalId,
            SetNames.Quantities,
            [wall.Identity.StepId],
            sets.QuantityLength("RunLength", wall.Frame.Length),
            sets.QuantityLength("MasonryThickness", wall.Frame.Thickness),
            sets.QuantityArea("GrossArea", wall.Quantities.GrossArea),
            sets.QuantityArea("OpeningArea", wall.Quantities.OpeningArea),
            sets.QuantityArea("NetArea", wall.Quantities.NetArea),
            sets.QuantityVolume("NetVolume", wall.Quantities.NetVolume),
            sets.QuantityCount("FullUnits", wall.Quantities.FullUnits),
            sets.QuantityCount("PartUnits", wall.Quantities.PartUnits),
            sets.QuantityCount("TroughUnits", wall.Quantities.TroughUnits),
            sets.QuantityVolume("BeamGroutVolume", wall.Quantities.BeamGrout));
    }

    /// <param name="elements">Instance numbers of the opening and of what fills it.</param>
    public static void Opening(SetWriter sets, OpeningLayout opening, IEnumerable<long> elements)
    {
        var along = opening.Placed.Left - opening.Design.Left;
        var up = opening.Placed.Bottom - opening.Design.Bottom;
        sets.PropertySet(
            opening.Opening.GlobalId,
            SetNames.Opening,
            elements,
            [
                sets.Property("Kind", SetWriter.Label(opening.Opening.Kind.ToString().ToLowerInvariant())),
                sets.Property("OnModule", SetWriter.Boolean(opening.OnModule)),
                sets.Property("AwaitsConsent", SetWriter.Boolean(opening.Placed != opening.Design)),
                sets.Property("ShiftAlong", along),
                sets.Property("ShiftUp", up),
                .. Rectangle(sets, "Model", opening.Opening.Model),
                .. Rectangle(sets, "Design", opening.Design),
                .. Rectangle(sets, "Placed", opening.Placed),
            ]);
    }

    private static StepValue[] Coursing(SetWriter sets, WallLayout wall, LayoutRules rules)
    {
        var cuts = wall.Courses.SelectMany(course => course.Pieces).Sum(piece => BitOperations.PopCount((uint)piece.Cut));
        return
        [
            sets.Property("Status", SetWriter.Label("coursed")),
            sets.Property("Catalog", SetWriter.Label(rules.Catalog.Name)),
            sets.Property("Rules", SetWriter.Label(rules.Set.Name)),
            sets.Property("LevelGroup", SetWriter.Identifier(wall.Group)),
            sets.Property("LevelLine", wall.LevelLine),
            sets.Property("Courses", SetWriter.Count(wall.Courses.Length)),
            sets.Property("Units", SetWriter.Count(wall.Courses.Sum(course => course.Pieces.Length))),
            sets.Property("FullUnits", SetWriter.Count(wall.Quantities.FullUnits)),
            sets.Property("PartUnits", SetWriter.Count(wall.Quantities.PartUnits)),
            sets.Property("Cuts", SetWriter.Count(cuts)),
            sets.Property("Lintels", SetWriter.Count(wall.Lintels.Length)),
            sets.Property("Cores", SetWriter.Count(wall.Cores.Length)),
            sets.Property("BondBeams", SetWriter.Count(wall.BondBeams.Length)),
            sets.Property("MovementJoints", SetWriter.Count(wall.MovementJoints.Length)),
        ];
    }

    private static List<StepValue> Findings(SetWriter sets, WallLayout wall)
    {
        var codes = wall.Findings.Select(finding => finding.Code.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        List<StepValue> properties =
        [
            sets.Property("Errors", SetWriter.Count(wall.Findings.Count(finding => finding.Severity == Severity.Error))),
            sets.Property("Warnings", SetWriter.Count(wall.Findings.Count(finding => finding.Severity == Severity.Warning))),
            sets.Property("Notes", SetWriter.Count(wall.Findings.Count(finding => finding.Severity == Severity.Note))),
        ];
        if (codes.Count > 0)
        {
            properties.Add(sets.Property("FindingCodes", SetWriter.Text(string.Join(", ", codes))));
        }

        return properties;
    }

    private static StepValue[] Rectangle(SetWriter sets, string name, ElevationRect rect) =>
    [
        sets.Property($"{name}Left", rect.Left),
        sets.Property($"{name}Right", rect.Right),
        sets.Property($"{name}Bottom", rect.Bottom),
        sets.Property($"{name}Top", rect.Top),
    ];
}
