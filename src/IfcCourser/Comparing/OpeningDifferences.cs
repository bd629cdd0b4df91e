using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Comparing;

/// <summary>What became of a wall's openings: by GlobalId, then by the place as drawn.</summary>
internal sealed class OpeningDifferences(WallLayout was, WallLayout now, UnitSystem units)
{
    public IEnumerable<Change> All()
    {
        var free = now.Openings.ToList();
        var known = was.Openings.Select(opening => (Old: opening, New: Take(free, other => other.Opening.GlobalId == opening.Opening.GlobalId))).ToList();
        foreach (var (before, byId) in known)
        {
            var after = byId ?? Take(free, other => other.Opening.Kind == before.Opening.Kind && Nearness.Is(other.Opening.Model, before.Opening.Model));
            var (model, placed) = (before.Opening.Model, before.Placed);
            if (after is null)
            {
                yield return new Change("opening-removed", Messages.OpeningAt(before.Opening.Label, model, units));
            }
            else if (!Nearness.Is(model, after.Opening.Model))
            {
                yield return new Change("opening-moved", Messages.OpeningFromTo(after.Opening.Label, model, after.Opening.Model, units));
            }
            else if (!Nearness.Is(placed, after.Placed))
            {
                yield return new Change("opening-placed", Messages.OpeningFromTo(after.Opening.Label, placed, after.Placed, units));
            }
        }

        foreach (var opening in free)
        {
            yield return new Change("opening-added", Messages.OpeningAt(opening.Opening.Label, opening.Opening.Model, units));
        }
    }

    private static OpeningLayout? Take(List<OpeningLayout> free, Predicate<OpeningLayout> isIt)
    {
        var place = free.FindIndex(isIt);
        if (place < 0)
        {
            return null;
        }

        var taken = free[place];
        free.RemoveAt(place);
        return taken;
    }
}
