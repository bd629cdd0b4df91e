using System.Globalization;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// The first and the second course in plan, under the elevation and on its axis, seen from above with the viewer's face below: where
/// every head joint lies from the start, and which courses repeat it. Then bond beams with what is built into them for others.
/// </summary>
internal static class Strips
{
    private const double TextHeight = 2.5;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        foreach (var course in facts.Wall.Courses.Take(2))
        {
            Draw(canvas, facts, course, SheetText.Strip(course.Number, RepeatsOf(facts, course)), StartsOf(course).Concat(EndsOf(course)));
        }

        foreach (var course in facts.Wall.Courses.Skip(2))
        {
            var inBeam = EmbedsOf(facts, course).Where(embed => facts.Wall.BondBeams.Any(beam => beam.From <= embed.At && beam.To >= embed.At && beam.Bottom <= embed.Z && beam.Top >= embed.Z));
            if (inBeam.Any())
            {
                Draw(canvas, facts, course, SheetText.BeamStrip(course.Number), inBeam.Select(embed => embed.At));
            }
        }
    }

    /// <param name="stations">What is measured from the start.</param>
    private static void Draw(Canvas canvas, WallFacts facts, Course course, string title, IEnumerable<Units.Length> stations)
    {
        var mm = canvas.PerPaper;
        var thickness = facts.Wall.Frame.Thickness.Mm;
        var heading = canvas.Extent.Bottom - (5 * mm);
        canvas.Write(new TextItem(Pen.Text, new Point(facts.Left, heading), title, TextHeight));
        var bottom = heading - (2.5 * mm) - thickness;
        foreach (var piece in course.Pieces)
        {
            Piece(canvas, piece, bottom, thickness);
        }

        foreach (var end in NeighbourEnds.Of(facts, course))
        {
            canvas.AddRange(NeighbourEnds.Cross(end with { Bottom = bottom, Top = bottom + thickness }));
        }

        foreach (var joint in facts.Wall.MovementJoints.Select(joint => joint.Rect).Where(joint => joint.Bottom < course.Top && joint.Top > course.Bottom))
        {
            canvas.AddRange(new[] { joint.Left.Mm, joint.Right.Mm }
                .Select(s => new LineItem(Pen.MovementJoint, new Point(s, bottom - mm), new Point(s, bottom + thickness + mm))));
        }

        foreach (var core in facts.Wall.Cores.Where(core => core.Bottom < course.Top && core.Top > course.Bottom))
        {
            Core(canvas, core.At.Mm, core.Diameter.Mm, bottom + thickness - core.Across.Mm);
        }

        foreach (var core in facts.Wall.CornerCores.Where(core => core.Bottom < course.Top && core.Top > course.Bottom))
        {
            Core(canvas, core.At.Mm, core.Diameter.Mm, bottom + thickness - core.Across.Mm);
        }

        foreach (var embed in EmbedsOf(facts, course))
        {
            canvas.Add(PolylineItem.Rectangle(Pen.BuiltIn, Box.At(new Point(embed.At.Mm, bottom + (thickness / 2)), 1.8 * mm, 1.8 * mm)));
        }

        Matches.DrawInPlan(canvas, facts, course.Bottom.Mm, bottom - (2 * mm), bottom + thickness + mm);
        Number(canvas, facts, course, bottom + (thickness / 2));
        var tier = new RunningTier(DimensionAxis.Horizontal, WallFacts.Start, bottom - (0.5 * mm), bottom - (5 * mm), TextSide.Before) { Shown = facts.Shown };
        tier.Draw(canvas, facts.Text, stations.Where(at => at.Mm != WallFacts.Start).Select(at => new Station(at.Mm)));
    }

    private static void Piece(Canvas canvas, Piece piece, double bottom, double thickness)
    {
        var box = new Box(piece.From.Mm, bottom, piece.To.Mm, bottom + thickness);
        if (piece.Cut != Cuts.None)
        {
            canvas.Add(new HatchItem(Pen.CutHatch, [box.Corners()], HatchKind.Cut));
        }

        canvas.Add(PolylineItem.Rectangle(PieceBlock.IsWhole(piece) ? Pen.WholeBlock : Pen.CutBlock, box));
        if (piece.Notch is { } notch)
        {
            var depth = thickness / 4;
            var face = notch.Face == "left" ? box.Top - depth : box.Bottom;
            canvas.Add(PolylineItem.Rectangle(Pen.BuiltIn, new Box(notch.From.Mm, face, notch.To.Mm, face + depth)));
        }
    }

    private static void Core(Canvas canvas, double s, double diameter, double y)
    {
        var at = new Point(s, y);
        var half = (diameter / 2) + canvas.PerPaper;
        canvas.Add(ArcItem.Circle(Pen.Core, at, diameter / 2));
        canvas.Add(new LineItem(Pen.Core, at - new Point(half, 0), at + new Point(half, 0)));
        canvas.Add(new LineItem(Pen.Core, at - new Point(0, half), at + new Point(0, half)));
    }

    private static void Number(Canvas canvas, WallFacts facts, Course course, double y)
    {
        var at = new Point(facts.Left - (4.5 * canvas.PerPaper), y);
        var text = course.Number.ToString(CultureInfo.InvariantCulture);
        canvas.Write(new TextItem(Pen.Heading, at, text, TextHeight, TextAnchor.Middle));
    }

    private static IEnumerable<Embed> EmbedsOf(WallFacts facts, Course course) => facts.Wall.Embeds.Where(embed => embed.Z >= course.Bottom && embed.Z <= course.Top);

    private static IEnumerable<Units.Length> StartsOf(Course course) => course.Pieces.Select(piece => piece.From);

    /// <summary>Where masonry stops before an opening or at the wall's end.</summary>
    private static IEnumerable<Units.Length> EndsOf(Course course) => course.Spans.Select(span => span.Run.To);

    /// <summary>Courses with the same pieces side by side, whatever their height.</summary>
    private static ImmutableArray<int> RepeatsOf(WallFacts facts, Course pattern)
    {
        var own = Joints(pattern);
        return [.. facts.Wall.Courses.Where(course => course.Number != pattern.Number && Joints(course).SequenceEqual(own)).Select(course => course.Number)];
    }

    private static IEnumerable<(Units.Length From, Units.Length To)> Joints(Course course) =>
        course.Pieces.Select(piece => (piece.From, piece.To));
}
