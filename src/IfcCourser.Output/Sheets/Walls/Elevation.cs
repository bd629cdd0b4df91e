using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>The wall's face: blocks, lintels, cores, openings, edges; what must be cut is labelled last, in what is left free.</summary>
internal static class Elevation
{
    public static void Draw(Canvas canvas, WallFacts facts)
    {
        foreach (var course in facts.Wall.Courses)
        {
            canvas.AddRange(course.Pieces.Select(piece => PieceBlock.Of(facts, course, piece)));
            foreach (var notch in course.Pieces.Where(piece => piece.Notch is not null).Select(NotchOf))
            {
                canvas.Add(notch);
                canvas.Take(ItemBox.Of(notch, canvas.PerPaper));
            }
        }

        canvas.AddRange(NeighbourEnds.Of(facts).SelectMany(NeighbourEnds.Cross));

        Abutments.Draw(canvas, facts);
        Lintels.Draw(canvas, facts);
        Cores(canvas, facts);
        Openings.Draw(canvas, facts);
        Joints(canvas, facts);
        Edges(canvas, facts);
        Beams.Draw(canvas, facts);
        Heights.Keep(canvas, facts);
        CutPieces.Draw(canvas, facts);
    }

    private static PolylineItem NotchOf(Piece piece)
    {
        var notch = piece.Notch!;
        var box = new Box(notch.From.Mm, piece.Bottom.Mm, notch.To.Mm, (piece.Bottom + notch.Height).Mm);
        return PolylineItem.Rectangle(Pen.BuiltIn, box);
    }

    /// <summary>The axis runs past the masonry at both ends, so that it is found on the wall's edges.</summary>
    private static void Cores(Canvas canvas, WallFacts facts)
    {
        var past = 2 * canvas.PerPaper;
        var cores = facts.Wall.Cores.Select(core => (core.At, core.Bottom, core.Top)).Concat(facts.Wall.CornerCores.Select(core => (core.At, core.Bottom, core.Top)));
        foreach (var core in cores)
        {
            var line = new LineItem(
                Pen.Core, new Point(core.At.Mm, core.Bottom.Mm - past), new Point(core.At.Mm, core.Top.Mm + past));
            canvas.Add(line);
            canvas.TakeLine(line);
        }
    }

    private static void Joints(Canvas canvas, WallFacts facts)
    {
        // Both faces, and past the masonry at both ends, so that it is found on the wall's edges.
        var past = 3 * canvas.PerPaper;
        foreach (var rect in facts.Wall.MovementJoints.Select(joint => joint.Rect))
        {
            foreach (var s in new[] { rect.Left.Mm, rect.Right.Mm })
            {
                var line = new LineItem(Pen.MovementJoint, new Point(s, rect.Bottom.Mm - past), new Point(s, rect.Top.Mm + past));
                canvas.Add(line);
                canvas.TakeLine(line);
            }
        }

        foreach (var embed in facts.Wall.Embeds)
        {
            canvas.Add(ArcItem.Circle(Pen.BuiltIn, new Point(embed.At.Mm, embed.Z.Mm), 1.5 * canvas.PerPaper));
            canvas.Take(Box.At(new Point(embed.At.Mm, embed.Z.Mm), 4 * canvas.PerPaper, 4 * canvas.PerPaper));
        }
    }

    private static void Edges(Canvas canvas, WallFacts facts)
    {
        var outline = facts.Whole.Outline.Select(p => new Point(p.S.Mm, p.Z.Mm)).ToImmutableArray();
        canvas.AddRange(facts.Stretch is { } stretch ? stretch.Edges(outline) : [new PolylineItem(Pen.OuterEdge, outline, PathEnd.Closed)]);
        var (start, pitch) = (facts.Wall.ModuleLines.Start.Mm, facts.Wall.ModuleLines.Pitch.Mm);
        if (pitch <= 0)
        {
            return;
        }

        var (near, far) = (0.8 * canvas.PerPaper, 2.2 * canvas.PerPaper);
        for (var k = (long)Math.Ceiling((facts.Left - start) / pitch); start + (k * pitch) <= facts.Right; k++)
        {
            var s = start + (k * pitch);
            canvas.Add(new LineItem(Pen.ModuleTick, new Point(s, facts.Top + near), new Point(s, facts.Top + far)));
            canvas.Add(new LineItem(Pen.ModuleTick, new Point(s, facts.Bottom - near), new Point(s, facts.Bottom - far)));
        }
    }
}
