using System.Collections.Immutable;
using IfcCourser.Modules;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>What of a wall decides where its courses lie; model heights.</summary>
internal sealed record WallHeights
{
    public required Length Base { get; init; }

    /// <summary>How high its courses may reach: its top less the head gap.</summary>
    public required Length Top { get; init; }

    /// <summary>Whether it ends level; a raked top is followed by every piece.</summary>
    public required bool IsLevel { get; init; }

    /// <summary>What may lie between the base and the first course.</summary>
    public required LengthRange Bed { get; init; }

    /// <summary>Whether it stands on another wall, without a levelling bed.</summary>
    public bool StandsOnWall { get; init; }

    /// <summary>Whether it bonds at a corner with a wall that ends at another height, where two rips at its top would lie beside whole courses.</summary>
    public bool MeetsAnotherTop { get; init; }

    /// <summary>Whether a bond beam is asked for at its level top.</summary>
    public bool HasTopBeam { get; init; }

    /// <summary>Whether it bonds at a corner with a wall that goes on above its top, so that a beam at its top turns into that wall.</summary>
    public bool MeetsHigher { get; init; }

    /// <summary>Heads of the openings that courses stop at, as wanted.</summary>
    public required ImmutableArray<Length> Heads { get; init; }

    /// <summary>Their sills above the base.</summary>
    public required ImmutableArray<Length> Sills { get; init; }

    /// <param name="wall">The wall.</param>
    /// <param name="crest">How high its masonry reaches over its base.</param>
    /// <param name="rules">Bed, head gap, opening allowances, bond beams.</param>
    public static WallHeights Of(Wall wall, Length crest, LayoutRules rules)
    {
        var foot = Length.FromModelMm(wall.Frame.Origin.Z);
        var openings = wall.Openings
            .Where(OpeningPlacement.IsCoursedAround)
            .Select(opening => OpeningPlacement.Design(opening, rules.Set.Allowances))
            .ToList();
        return new WallHeights
        {
            Base = foot,
            Top = foot + crest - HeadGap(wall, rules),
            IsLevel = EndsLevel(wall),
            Bed = rules.Catalog.LevellingBed,
            HasTopBeam = EndsLevel(wall) && BeamDemands.RuleFor(wall, rules) is { Tops: not BeamedTops.None },
            Heads = [.. openings.Select(opening => opening.Top).Where(head => head < crest).Select(head => foot + head)],
            Sills = [.. openings.Select(opening => opening.Bottom).Where(sill => sill > Length.Zero).Select(sill => foot + sill)],
        };
    }

    /// <summary>
    /// What is left open over a wall: the rules' gap where the model says that the wall does not carry, so that the slab
    /// may bend without loading it. Common practice, no source.
    /// </summary>
    public static Length HeadGap(Wall wall, LayoutRules rules) =>
        wall.LoadBearing == false && EndsLevel(wall) ? rules.Set.PartitionHeadGap : Length.Zero;

    public bool Equals(WallHeights? other) =>
        other is not null && Base == other.Base && Top == other.Top && IsLevel == other.IsLevel && Bed == other.Bed
        && StandsOnWall == other.StandsOnWall && MeetsAnotherTop == other.MeetsAnotherTop && HasTopBeam == other.HasTopBeam && MeetsHigher == other.MeetsHigher
        && Heads.AsSpan().SequenceEqual(other.Heads.AsSpan()) && Sills.AsSpan().SequenceEqual(other.Sills.AsSpan());

    public override int GetHashCode() => HashCode.Combine(Base, Top, IsLevel, Bed, MeetsAnotherTop, HasTopBeam, Heads.Length, Sills.Length);

    private static bool EndsLevel(Wall wall)
    {
        var crest = wall.Outline.Max(point => point.Z);
        return wall.Outline.Where((point, i) => point.Z == crest && wall.Outline[(i + 1) % wall.Outline.Length].Z == crest).Any();
    }
}
