using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Names what of the bond beams asked for a wall does not have, and where bars can't pass.</summary>
internal sealed class BeamFindings(WallLines lines, BondBeamRule rule, ImmutableArray<Lintel> lintels, LayoutRules rules)
{
    private readonly UnitSystem _units = rules.Catalog.Units;

    /// <summary>No whole course lies where an opening asks for a beam.</summary>
    public static Finding NoCourse(BeamRequest request) => new(
        FindingCodes.BondBeamMissing, Messages.NoCourseForBeam(request.Opening!.Opening.Label, request.Why), PlaceOf(request));

    /// <summary>No trough unit is made for the wall's width.</summary>
    public Finding NoTrough(BeamRequest request) => new(
        FindingCodes.BondBeamMissing, Messages.NoTroughUnit(lines.Wall.Frame.Thickness, request.Why, _units), PlaceOf(request));

    /// <summary>A beam over or under an opening whose bars run on less than asked for, or that is not there at all.</summary>
    public IEnumerable<Finding> Reach(BeamRequest request, List<BeamPart> near, Course course)
    {
        var place = PlaceOf(request) with { Course = course.Number, Z = course.Bottom };
        if (near.Count == 0)
        {
            yield return new Finding(FindingCodes.BondBeamMissing, Messages.NoRoomForBeam(request.Opening!.Opening.Label, request.Why), place);
            yield break;
        }

        var (cover, wanted) = (rule.Bars.Cover.End, rule.Openings!.Extension);
        var left = Length.Max(request.Jambs!.Value.From - near.Min(part => part.Run.From) - cover, Length.Zero);
        var right = Length.Max(near.Max(part => part.Run.To) - request.Jambs.Value.To - cover, Length.Zero);
        if (Length.Min(left, right) < wanted)
        {
            yield return new Finding(
                FindingCodes.BondBeamShort, Messages.BeamShort(request.Opening!.Opening.Label, request.Why, left < wanted ? left : null, right < wanted ? right : null, wanted, _units), place);
        }
    }

    /// <summary>Where openings or solid lintels part a beam that is to run over the wall's length; movement joints do so by intent.</summary>
    public IEnumerable<Finding> Interrupted(Course course, ImmutableArray<ImmutableArray<BeamPart>> beams, ImmutableArray<OpeningLayout> openings, BeamParts parts)
    {
        foreach (var (left, right) in beams.Zip(beams.Skip(1), (a, b) => (a[^1].Run, b[0].Run)).Where(pair => !parts.IsJointBetween(pair.Item1, pair.Item2)))
        {
            var gap = new Interval(left.To, right.From);
            var place = new FindingPlace { S = gap.From, Z = course.Bottom, Course = course.Number };
            var opening = openings.FirstOrDefault(opening => opening.Interrupts && opening.Placed.Bottom < course.Top && opening.Placed.Top > course.Bottom
                && gap.Overlaps(new Interval(opening.Placed.Left, opening.Placed.Right)));
            var lintel = lintels.FirstOrDefault(lintel => lintel.Kind == LintelKind.Solid && lintel.Bottom < course.Top && lintel.Top > course.Bottom
                && gap.Overlaps(new Interval(lintel.From, lintel.To)));
            if (opening is not null)
            {
                yield return new Finding(FindingCodes.BondBeamInterrupted, Messages.BeamInterrupted(course.Number, opening.Opening.Label), place with { Opening = opening.Opening.GlobalId });
            }
            else if (lintel is not null)
            {
                yield return new Finding(FindingCodes.BondBeamInterrupted, Messages.BeamAtLintel(course.Number, lintel.Id), place);
            }
            else
            {
                yield return new Finding(FindingCodes.BondBeamInterrupted, Messages.BeamAtCutPiece(course.Number, gap.From, gap.To, _units), place);
            }
        }
    }

    /// <summary>Beams that end at a corner because the other wall's courses lie at other heights.</summary>
    public IEnumerable<Finding> Parted(CornerBar corner) => corner.Beams.Parted.Select(line => lines.BandOnLine(line)!.Value).Select(band => new Finding(
        FindingCodes.BondBeamInterrupted,
        Messages.BeamPartedAtCorner(band.Number),
        new FindingPlace { S = corner.Place.From, Z = band.Bottom, Course = band.Number, Walls = [corner.OtherWall] }));

    /// <summary>Tops without a beam, beams too far apart, formed beams.</summary>
    public IEnumerable<Finding> Missing(IReadOnlyList<BondBeam> beams)
    {
        var outline = new ElevationOutline(lines.Wall.Outline);
        foreach (var top in rule.Tops == BeamedTops.None ? [] : outline.LevelTops.Where(top => !beams.Any(beam => EndsAt(beam, top))))
        {
            yield return new Finding(FindingCodes.BondBeamMissing, Messages.NoTopBeam(top, _units), new FindingPlace { Z = top });
        }

        foreach (var slope in rule.Tops == BeamedTops.None ? [] : outline.SlopedTops)
        {
            if (lines.RakedBeams.Any(beam => beam.Run.From <= slope.From && beam.Run.To >= slope.To))
            {
                continue;
            }

            yield return new Finding(FindingCodes.BondBeamMissing, Messages.NoRakedBeam(slope.From, slope.To, _units), new FindingPlace { S = slope.From });
        }

        if (!lines.RakedBeams.IsEmpty)
        {
            var (from, to) = (lines.RakedBeams[0].Run.From, lines.RakedBeams[^1].Run.To);
            yield return new Finding(FindingCodes.BondBeamFormed, Messages.RakedBeamFormed(from, to, _units), new FindingPlace { S = from });
            yield return new Finding(FindingCodes.OutlineNotFilled, Messages.RakedBeamOpen, new FindingPlace { S = from, Z = lines.Bands[^1].Top }) { Severity = Severity.Note };
        }

        var formed = beams.Where(beam => beam.Kind == BondBeamKind.Formed).ToList();
        if (formed.Count > 0)
        {
            yield return new Finding(
                FindingCodes.BondBeamFormed,
                Messages.BeamFormed([.. formed.Select(beam => beam.Course!.Value).Distinct()], lines.Wall.Frame.Thickness, _units),
                new FindingPlace { S = formed[0].From, Z = formed[0].Bottom, Course = formed[0].Course });
        }

        foreach (var (from, to) in TooFarApart())
        {
            yield return new Finding(FindingCodes.BondBeamMissing, Messages.BeamsTooFarApart(from, to, rule.LargestSpacing!.Value, _units), new FindingPlace { Z = from });
        }
    }

    private bool EndsAt(BondBeam beam, Length top) => beam.Course is { } course && lines.Beams.Any(line => line.Line == lines.Bands[course - 1].Line)
        && beam.Top <= top + rules.Catalog.BedJoint.Nominal && top - beam.Top <= Length.Max(rule.TopWithin, rules.Set.MortarRest);

    private IEnumerable<(Length From, Length To)> TooFarApart()
    {
        var middles = lines.Beams.Select(beam => lines.BandOnLine(beam.Line)!.Value.Middle).Prepend(Length.Zero).ToList();
        return rule.LargestSpacing is not { } spacing ? [] : middles.Zip(middles.Skip(1).Append(lines.Bands[^1].Top)).Where(pair => pair.Second - pair.First > spacing);
    }

    private static FindingPlace PlaceOf(BeamRequest request) => request.Opening is { } opening
        ? new FindingPlace
        {
            S = opening.Placed.Left,
            Z = string.Equals(request.Why, "over-opening", StringComparison.Ordinal) ? opening.Placed.Top : opening.Placed.Bottom,
            Opening = opening.Opening.GlobalId,
        }
        : new FindingPlace { Course = request.Course + 1 };
}
