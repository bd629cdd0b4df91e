using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Piers that are too short, or of a length that no two courses can bond, with the lengths that would work.</summary>
internal sealed class PierFindings(WallLines lines, Func<CourseBand, ImmutableArray<ElevationRect>> taken, LayoutRules rules, PierTables tables)
{
    private readonly Length _joint = rules.Catalog.HeadJoint.Nominal;
    private readonly UnitSystem _units = rules.Catalog.Units;

    /// <param name="openings">The wall's openings.</param>
    public IEnumerable<Finding> Of(ImmutableArray<OpeningLayout> openings)
    {
        foreach (var pier in Pier.Of(lines.Outline, openings))
        {
            if (pier.Rect.Width < rules.Catalog.LeastPier)
            {
                var modular = OnModule(pier, rules.Catalog.LeastPier);
                yield return Told(FindingCodes.PierShort, pier, Messages.PierShort(pier.Rect.Width, rules.Catalog.LeastPier, modular, _units));
                continue;
            }

            var (ofAll, shift) = SharedAtCorner(pier);
            var length = pier.Rect.Width - ofAll;
            if (Bands(pier).Count() > 1 && shift < length && !tables.Of(rules, shift).Possible.Contains(length))
            {
                var nominal = tables.Of(rules, shift).Nominal;
                var (under, over) = nominal.Nearest(length);
                yield return Told(FindingCodes.PierNotBondable, pier, Messages.PierNotBondable(
                    length, rules.MinPiece, rules.MinOverlap, under, over, BondedOnModule(pier, nominal, over ?? length), _units));
            }
        }
    }

    /// <summary>The shortest length on the module, no shorter than one asked for.</summary>
    private Length OnModule(Pier pier, Length least) => (least - Offset(pier)).CeilingTo(rules.Module) + Offset(pier);

    /// <summary>Masonry starts on a line and ends a joint before one; against another wall's face the joint is the run's last.</summary>
    private Length Offset(Pier pier)
    {
        var end = pier.Left is null ? lines.Wall.Start.Kind : pier.Right is null ? lines.Wall.End.Kind : Walls.EndKind.Free;
        return end is Walls.EndKind.Tee or Walls.EndKind.Cross ? Length.Zero : -_joint;
    }

    private Length BondedOnModule(Pier pier, PierLengths bonded, Length least)
    {
        var length = OnModule(pier, least);
        while (!bonded.Contains(length))
        {
            length += rules.Module;
        }

        return length;
    }

    /// <summary>What another wall takes of all its courses at a corner, and how much more of some.</summary>
    private (Length OfAll, Length OfSome) SharedAtCorner(Pier pier)
    {
        var ends = Bands(pier).Select(band => taken(band)
            .Where(run => pier.Left is null ? run.Left <= pier.Rect.Left && run.Right > pier.Rect.Left : run.Right >= pier.Rect.Right && run.Left < pier.Rect.Right)
            .Select(run => pier.Left is null ? run.Right - pier.Rect.Left : pier.Rect.Right - run.Left)
            .DefaultIfEmpty(Length.Zero).Max()).ToList();
        return ends.Count == 0 || (pier.Left is not null && pier.Right is not null) ? default : (ends.Min(), ends.Max() - ends.Min());
    }

    private IEnumerable<CourseBand> Bands(Pier pier) => lines.Bands.Where(band => band.Bottom < pier.Rect.Top && band.Top > pier.Rect.Bottom);

    private static Finding Told(FindingCode code, Pier pier, string message) => new(code, message, new FindingPlace
    {
        S = pier.Rect.Left,
        Z = pier.Rect.Bottom,
        Opening = (pier.Right ?? pier.Left)!.Opening.GlobalId,
    });
}
