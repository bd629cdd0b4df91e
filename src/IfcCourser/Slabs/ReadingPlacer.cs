using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Slabs;

/// <summary>Puts the readings of a file into the model's axes, and refuses what can't be a reading of this storey.</summary>
internal sealed class ReadingPlacer
{
    /// <summary>mm: readings nearer to each other are of one place.</summary>
    private const double SamePlace = 10;

    /// <summary>mm: what two readings of one place may differ by. Common practice, no source: twice what a level reads.</summary>
    private const double SameHeight = 3;

    /// <summary>mm: a slab's top lies no further from the design than this. Common practice, no source.</summary>
    private const double OffDesign = 150;

    /// <summary>mm: readings further than this from every wall are of something else. Common practice, no source.</summary>
    private const double OffWalls = 10_000;

    /// <summary>mm: control points further than this off their place are wrong. Common practice, no source.</summary>
    private const double OffControl = 50;

    /// <summary>What distances between control points may differ by, in proportion, before units are wrong.</summary>
    private const double OffScale = 0.01;

    /// <summary>More readings than this take longer than they tell.</summary>
    private const int Most = 20_000;

    private readonly ReadingsFile _file;
    private readonly Layout _layout;
    private readonly ImmutableArray<FirstCourseBlock> _blocks;
    private readonly ILookup<string, WallLayout> _walls;
    private Fault? _fault;

    /// <param name="file">As read.</param>
    /// <param name="layout">With the points that were set out.</param>
    /// <param name="blocks">Of the storey's first course, at least one.</param>
    public ReadingPlacer(ReadingsFile file, Layout layout, ImmutableArray<FirstCourseBlock> blocks)
    {
        (_file, _layout, _blocks) = (file, layout, blocks);
        _walls = layout.Walls.SelectMany(wall => new[] { wall.Identity.GlobalId, wall.Identity.Name }.OfType<string>().Distinct(StringComparer.Ordinal).Select(name => (name, wall)))
            .ToLookup(wall => wall.name, wall => wall.wall, StringComparer.Ordinal);
    }

    /// <param name="code">Slab or top: which level readings count.</param>
    public Outcome<PlacedReadings> Place(ReadingCode code)
    {
        if (_file.Readings.Length > Most)
        {
            return Messages.ReadingsTooMany(_file.File, _file.Readings.Length, Most);
        }

        var here = _file.Readings.Where(reading => !IsElsewhere(reading)).ToArray();
        var fit = Fit([.. here.Where(reading => reading.Code == ReadingCode.Control)]);
        if (_fault is not null)
        {
            return _fault;
        }

        var levels = here.Where(reading => reading.Code == code && reading.Height is not null)
            .Select(reading => new PlacedReading([reading.Line], reading.Point, ToModel(reading, fit), reading.Height!.Value)).ToArray();
        var bars = here.Where(reading => reading.Code == ReadingCode.Bar)
            .Select(reading => new PlacedBar(reading.Line, reading.Point, reading.Wall, reading.Core, ToModel(reading, fit))).ToImmutableArray();
        if ((_fault ?? FarOff(levels)) is { } fault)
        {
            return fault;
        }

        var designed = levels.Select(reading => Designed(reading, code)).ToArray();
        var (heights, zero) = Heights([.. levels.Zip(designed, (reading, height) => reading.Height - height)]);
        var outlier = levels.Zip(designed).FirstOrDefault(pair => Math.Abs(pair.First.Height - zero - pair.Second) > OffDesign).First;
        if (outlier is not null)
        {
            return Messages.ReadingOutlier(_file.File, outlier.Lines[0], outlier.Height - zero - Designed(outlier, code), _layout.Rules.Catalog.Units);
        }

        var merged = Merged(levels);
        return _fault is { } unlike ? unlike : new PlacedReadings(merged, bars, fit, heights, zero, _file.Readings.Length - here.Length);
    }

    private FirstCourseBlock NearestBlock(Vector2 place) => _blocks.MinBy(block => (block.Middle - place).Length)!;

    private double Designed(PlacedReading reading, ReadingCode code)
    {
        var block = NearestBlock(reading.Plan);
        return code == ReadingCode.Top ? block.Top : block.Wall.Frame.Origin.Z;
    }

    private bool IsElsewhere(Reading reading) => reading.Wall is { } wall && _walls[wall].Any()
        && !_walls[wall].Any(found => _blocks.Any(block => block.Wall == found));

    private Vector2 ToModel(Reading reading, ControlFit? fit)
    {
        if (fit is not null)
        {
            return fit.ToModel(reading.Plan);
        }

        var survey = _layout.SetOut.Survey;
        return _file.Axes switch
        {
            ReadingAxes.Plain => reading.Plan,
            ReadingAxes.Survey => ((survey.East * (reading.Plan.X - survey.Eastings)) + (survey.East.Left * (reading.Plan.Y - survey.Northings))) * (1 / survey.Scale),
            _ => OnWall(reading),
        };
    }

    private Vector2 OnWall(Reading reading)
    {
        if (reading.Wall is { } name && _walls[name].ToArray() is [var wall])
        {
            return wall.Frame.PointAt(Length.FromMm(reading.Plan.X), Length.FromMm(reading.Plan.Y), default).Plan;
        }

        _fault ??= Messages.ReadingWallUnknown(_file.File, reading.Line, reading.Wall, reading.Wall is { } given && _walls[given].Any());
        return default;
    }

    private ControlFit? Fit(Reading[] control)
    {
        if (control.Length == 0)
        {
            return null;
        }

        var known = control.Select(reading => (Reading: reading, Place: Known(reading))).ToArray();
        var spread = control.Max(reading => (reading.Plan - control[0].Plan).Length);
        if (control.Length < 2 || spread < SamePlace)
        {
            _fault ??= Messages.ControlTooFew(_file.File, control[0].Line);
        }

        if (_fault is not null)
        {
            return null;
        }

        var fit = ControlFit.Of([.. known.Select(point => (point.Reading.Point, point.Reading.Plan, point.Place))]);
        var worst = fit.Residuals.MaxBy(residual => residual.Off.Length)!;
        if (!Fits(fit) && Fits(ControlFit.Of([.. known.Select(point => (point.Reading.Point, new Vector2(point.Reading.Plan.Y, point.Reading.Plan.X), point.Place))])))
        {
            _fault = Messages.ControlExchanged(_file.File);
        }
        else if (Math.Abs(fit.Scale - 1) > OffScale)
        {
            _fault = Messages.ControlScale(_file.File, fit.Scale);
        }
        else if (worst.Off.Length > OffControl)
        {
            _fault = Messages.ControlOff(_file.File, control[fit.Residuals.IndexOf(worst)].Line, worst.Point, worst.Off.Length, _layout.Rules.Catalog.Units);
        }

        return fit;
    }

    private static bool Fits(ControlFit fit) => Math.Abs(fit.Scale - 1) <= OffScale && fit.Residuals.All(residual => residual.Off.Length <= OffControl);

    private Vector2 Known(Reading reading)
    {
        if (int.TryParse(reading.Point, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && SetOutPoints.Of(_layout, number) is { } place)
        {
            return place;
        }

        _fault ??= Messages.ControlUnknown(_file.File, reading.Line, reading.Point);
        return default;
    }

    private Fault? FarOff(PlacedReading[] readings)
    {
        var far = readings.Select(reading => (Reading: reading, Away: (NearestBlock(reading.Plan).Middle - reading.Plan).Length)).Where(reading => reading.Away > OffWalls).ToArray();
        return far.Length == 0 ? null
            : far.Length == readings.Length ? Messages.ReadingsElsewhere(_file.File, far.Min(reading => reading.Away))
            : Messages.ReadingFarOff(_file.File, far[0].Reading.Lines[0], far[0].Away);
    }

    /// <summary>The model's heights, or the map's, where the middle reading lies near the design in them.</summary>
    private (ReadingHeights Heights, double Zero) Heights(double[] differences)
    {
        if (differences.Length == 0)
        {
            return (ReadingHeights.Model, 0);
        }

        Array.Sort(differences);
        var middle = differences[differences.Length / 2];
        var survey = _layout.SetOut.Survey.Height;
        return Math.Abs(middle) <= OffDesign ? (ReadingHeights.Model, 0)
            : _layout.SetOut.Survey.Kind == SurveyKind.Map && Math.Abs(middle - survey) <= OffDesign ? (ReadingHeights.Survey, survey)
            : (ReadingHeights.Bench, middle);
    }

    private ImmutableArray<PlacedReading> Merged(PlacedReading[] readings)
    {
        var merged = new List<PlacedReading>();
        foreach (var reading in readings)
        {
            var same = merged.FindIndex(other => (other.Plan - reading.Plan).Length <= SamePlace);
            if (same < 0)
            {
                merged.Add(reading);
                continue;
            }

            var first = merged[same];
            if (Math.Abs(first.Height - reading.Height) > SameHeight)
            {
                _fault ??= Messages.ReadingsDisagree(_file.File, first.Lines[0], reading.Lines[0], Math.Abs(first.Height - reading.Height), _layout.Rules.Catalog.Units);
            }

            var count = first.Lines.Length;
            merged[same] = first with { Lines = first.Lines.AddRange(reading.Lines), Height = ((first.Height * count) + reading.Height) / (count + 1) };
        }

        return [.. merged];
    }
}
