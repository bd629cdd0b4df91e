using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Sections across a wall: its first course on the bed, and a bond beam of trough units.</summary>
internal static class SectionDetail
{
    public static IEnumerable<Detail> Of(Layout layout) => FirstCourses(layout).Concat(Beams(layout));

    /// <summary>A course with a bar and its notch where there is one, else the first course of the first wall that has a piece in it.</summary>
    private static IEnumerable<Detail> FirstCourses(Layout layout)
    {
        var wall = layout.Walls.FirstOrDefault(wall => wall.Courses[0].Pieces.Any(piece => piece.Notch is not null)) ?? layout.Walls.FirstOrDefault(wall => !wall.Courses[0].Pieces.IsEmpty);
        if (wall is null)
        {
            yield break;
        }

        yield return new Detail(DetailText.FirstCourse(WallNumbers.Sheet(layout, wall)), canvas => FirstCourse(canvas, layout, wall));
    }

    private static void FirstCourse(Canvas canvas, Layout layout, WallLayout wall)
    {
        var (catalog, text) = (layout.Rules.Catalog, new SheetLengths(layout.Rules.Catalog.Units));
        var (first, thickness) = (wall.Courses[0], wall.Frame.Thickness.Mm);
        var piece = first.Pieces.FirstOrDefault(piece => piece.Notch is not null) ?? first.Pieces[0];
        var core = wall.Cores.FirstOrDefault(core => piece.Cores.Contains(core.Id, StringComparer.Ordinal));
        var (bottom, top) = (first.Bottom.Mm, first.Top.Mm);
        var slab = new Box(-60, -90, thickness + 60, 0);
        var notes = new SectionNotes(canvas, thickness + 60);
        canvas.Add(new HatchItem(Pen.LintelHatch, [slab.Corners()], HatchKind.Formed));
        canvas.Add(new LineItem(Pen.SlabEdge, new Point(slab.Left, 0), new Point(slab.Right, 0)));
        canvas.Add(new HatchItem(Pen.CutHatch, [new Box(0, 0, thickness, bottom).Corners()], HatchKind.Cut));
        canvas.Add(PolylineItem.Rectangle(Pen.CutBlock, new Box(0, 0, thickness, bottom)));
        canvas.Add(PolylineItem.Rectangle(Pen.OuterEdge, new Box(0, bottom, thickness, top)));
        if (wall.Courses.Length > 1)
        {
            var over = wall.Courses[1];
            canvas.AddRange(new[] { 0, thickness }.Select(x => new LineItem(Pen.OuterEdge, new Point(x, over.Bottom.Mm), new Point(x, over.Bottom.Mm + 90))));
            canvas.Add(new LineItem(Pen.OuterEdge, new Point(0, over.Bottom.Mm), new Point(thickness, over.Bottom.Mm)));
            notes.Add(new Point(thickness - 15, top), DetailText.BedJoint(catalog, text));
        }

        notes.Add(new Point(thickness - 15, (bottom + top) / 2), DetailText.Block(catalog, wall.Frame.Thickness, text));
        if (piece.Notch is { } notch)
        {
            var depth = thickness / 4;
            var x = notch.Face == "left" ? 0 : thickness - depth;
            canvas.Add(PolylineItem.Rectangle(Pen.BuiltIn, new Box(x, bottom, x + depth, bottom + notch.Height.Mm)));
            notes.Add(new Point(x + (depth / 2), bottom + (notch.Height.Mm / 2)), DetailText.Notch(notch, text));
        }

        if (core is not null)
        {
            Core(canvas, notes, core, text, top);
        }

        notes.Add(new Point(thickness - 15, bottom / 2), DetailText.Bed(catalog.LevellingBed, first.Bottom, text));
        notes.Add(new Point(thickness + 30, -30), DetailText.Slab);
        notes.Draw();
        Tiers(canvas, text, thickness, slab, [0, bottom, top]);
    }

    /// <summary>The core's sides dashed, its bar down into the slab.</summary>
    private static void Core(Canvas canvas, SectionNotes notes, Core core, SheetLengths text, double top)
    {
        var (at, radius) = (core.Across.Mm, core.Diameter.Mm / 2);
        canvas.AddRange(new[] { at - radius, at + radius }.Select(x => new LineItem(Pen.DesignedJamb, new Point(x, core.Bottom.Mm), new Point(x, top + 70))));
        canvas.Add(new LineItem(Pen.Core, new Point(at, -80), new Point(at, top + 90)));
        notes.Add(new Point(at, top + 60), DetailText.Core(core, text));
        if (core.Bars?.Starter is { } starter)
        {
            notes.Add(new Point(at, -60), DetailText.Starter(starter, text));
        }
    }

    private static IEnumerable<Detail> Beams(Layout layout)
    {
        var beams = from wall in layout.Walls
                    from beam in wall.BondBeams
                    where beam.Kind == BondBeamKind.Trough && layout.Rules.Catalog.TroughFor(wall.Frame.Thickness) is not null
                    select (Wall: wall, Beam: beam);
        return beams.Take(1).Select(place => new Detail(DetailText.Beam(WallNumbers.Sheet(layout, place.Wall), place.Beam), canvas => Beam(canvas, layout, place.Wall, place.Beam)));
    }

    private static void Beam(Canvas canvas, Layout layout, WallLayout wall, BondBeam beam)
    {
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var trough = layout.Rules.Catalog.TroughFor(wall.Frame.Thickness)!;
        var (thickness, height) = (wall.Frame.Thickness.Mm, (beam.Top - beam.Bottom).Mm);
        var hollow = new Box(trough.Shell.Mm, trough.Bottom.Mm, thickness - trough.Shell.Mm, height);
        var notes = new SectionNotes(canvas, thickness + 40);
        canvas.Add(new HatchItem(Pen.LintelHatch, [hollow.Corners()], HatchKind.Carries));
        canvas.Add(new PolylineItem(
            Pen.OuterEdge,
            [
                new(0, height), new(0, 0), new(thickness, 0), new(thickness, height), new(hollow.Right, height), new(hollow.Right, hollow.Bottom),
                new(hollow.Left, hollow.Bottom), new(hollow.Left, height),
            ],
            PathEnd.Closed));
        canvas.AddRange(new[] { 0, thickness }.Select(x => new LineItem(Pen.WholeBlock, new Point(x, -90), new Point(x, -layout.Rules.Catalog.BedJoint.Nominal.Mm))));
        canvas.Add(new LineItem(Pen.WholeBlock, new Point(0, -layout.Rules.Catalog.BedJoint.Nominal.Mm), new Point(thickness, -layout.Rules.Catalog.BedJoint.Nominal.Mm)));
        var bars = Enumerable.Range(0, beam.BarCount).Select(i => new Point(hollow.Left + (hollow.Width * (i + 1) / (beam.BarCount + 1)), hollow.Bottom + (hollow.Height / 3))).ToArray();
        canvas.AddRange(bars.Select(bar => new HatchItem(Pen.Lintel, [Disc(bar, 7)], HatchKind.Solid)));
        notes.Add(new Point(hollow.Right - 10, hollow.Top - 25), DetailText.Grout);
        notes.Add(bars[^1], DetailText.Bars(beam, text));
        notes.Add(new Point(thickness - (trough.Shell.Mm / 2), trough.Bottom.Mm / 2), DetailText.Trough(trough, text));
        notes.Draw();
        Tiers(canvas, text, thickness, new Box(0, -90, thickness, height), [0, trough.Bottom.Mm, height]);
    }

    private static ImmutableArray<Point> Disc(Point at, double radius)
    {
        const int Corners = 16;
        return [.. Enumerable.Range(0, Corners).Select(i => ArcItem.Circle(Pen.Lintel, at, radius).PointAt(360.0 * i / Corners))];
    }

    /// <summary>The thickness under the section, heights left of it.</summary>
    private static void Tiers(Canvas canvas, SheetLengths text, double thickness, Box outer, IEnumerable<double> heights)
    {
        var mm = canvas.PerPaper;
        new RunningTier(DimensionAxis.Vertical, 0, outer.Left, outer.Left - (4 * mm), TextSide.Before).Draw(canvas, text, heights.Select(z => new Station(z)));
        new RunningTier(DimensionAxis.Horizontal, 0, outer.Bottom, outer.Bottom - (4 * mm), TextSide.Before).Draw(canvas, text, [new Station(thickness)]);
    }
}
