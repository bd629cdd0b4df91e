using System.Text;
using System.Text.Json;
using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets.Sets;

namespace IfcCourser.Output.Comparisons;

/// <summary>What changed between two layouts, for other programs.</summary>
public static class ComparisonJson
{
    /// <summary>
    /// <c>{ added[], removed[], changed: [{ globalId, oldGlobalId, name, what[], details[], areas[], cost }], superseded[], totals, order[] }</c>: walls by
    /// GlobalId, sheets of the older issue by number and title, what walls and job take more than before; areas are [left, right, bottom, top] in the
    /// newer wall's elevation.
    /// </summary>
    /// <param name="superseded">Sheets of the older issue.</param>
    public static string Of(Layout older, Layout newer, LayoutComparison comparison, IEnumerable<SetSheet> superseded)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            json.Member("added", comparison.Added.Select(wall => wall.GlobalId));
            json.Member("removed", comparison.Removed.Select(wall => wall.GlobalId));
            json.WriteStartArray("changed");
            foreach (var wall in comparison.Changed)
            {
                json.WriteStartObject();
                json.WriteString("globalId", wall.New.GlobalId);
                json.WriteString("oldGlobalId", wall.Old.GlobalId);
                json.WriteString("name", wall.New.Name);
                json.Member("what", wall.Changes.Select(change => change.What).Distinct(StringComparer.Ordinal));
                json.Member("details", wall.Changes.Select(change => $"{change.What}: {change.Detail}"));
                json.WriteStartArray("areas");
                foreach (var area in wall.Areas)
                {
                    json.WriteStartArray();
                    foreach (var length in (Units.Length[])[area.Left, area.Right, area.Bottom, area.Top])
                    {
                        json.Value(length);
                    }

                    json.WriteEndArray();
                }

                json.WriteEndArray();
                Cost(json, wall.Cost);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.Member("superseded", superseded.Select(sheet => $"{sheet.Number} {sheet.Title}".TrimEnd()));
            Totals(json, comparison);
            Order(json, OrderDifference.Of(older, newer));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Cost(Utf8JsonWriter json, PieceCounts cost)
    {
        json.WriteStartObject("cost");
        json.WriteNumber("fullUnits", cost.Whole);
        json.WriteNumber("partUnits", cost.Cut);
        json.WriteNumber("cuts", cost.SawCuts);
        json.WriteNumber("lintels", cost.Lintels);
        json.WriteNumber("cores", cost.Bars);
        json.WriteEndObject();
    }

    /// <summary>Gross amounts; null where one is not known.</summary>
    private static void Order(Utf8JsonWriter json, ImmutableArray<OrderDifference> lines)
    {
        json.WriteStartArray("order");
        foreach (var line in lines)
        {
            json.WriteStartObject();
            json.WriteString("item", JsonNames.Of(line.Item));
            json.WriteString("description", line.What);
            Number(json, "width", line.Width);
            json.WriteString("unit", line.Unit);
            Number(json, "old", line.Before);
            Number(json, "new", line.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Totals(Utf8JsonWriter json, LayoutComparison comparison)
    {
        var (was, now) = (comparison.OldTotals, comparison.NewTotals);
        json.WriteStartObject("totals");
        foreach (var (name, before, after) in ((string, int, int)[])
            [("pieces", was.Pieces, now.Pieces), ("fullUnits", was.FullUnits, now.FullUnits), ("partUnits", was.PartUnits, now.PartUnits), ("cuts", was.Cuts, now.Cuts), ("lintels", was.Lintels, now.Lintels), ("cores", was.Cores, now.Cores)])
        {
            json.WriteStartObject(name);
            json.WriteNumber("old", before);
            json.WriteNumber("new", after);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }
}
