using System.Text.Json;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>The take-off of layout.json: what is to be ordered, and what each unit is sawn into.</summary>
internal static class OrderJson
{
    public static void Write(Utf8JsonWriter json, Order order)
    {
        json.WriteStartObject("takeoff");
        json.Lines("lines", order.Lines, Line);
        json.Line("joints", line => Joints(line, order.Joints));
        if (order.BagsByPallets is { } bags)
        {
            json.WriteNumber("bagsByPallets", bags);
        }

        if (!order.Deliveries.IsEmpty)
        {
            Deliveries(json, order.Deliveries);
        }

        Groups(json, "storeys", "storey", order.Storeys);
        Groups(json, "walls", "wall", order.Walls);
        json.WriteString("offcuts", JsonNames.Of(order.Saw.Reuse));
        json.WriteNumber("leastSawnUnits", order.Saw.LeastUnits);
        json.Lines("sawnUnits", order.Saw.Units, Sawn);
        json.Lines("barStock", order.Bars, BarStock);
        json.WriteEndObject();
    }

    private static void Deliveries(Utf8JsonWriter json, ImmutableArray<Delivery> deliveries)
    {
        json.WriteStartArray("deliveries");
        foreach (var delivery in deliveries)
        {
            json.WriteStartObject();
            json.WriteString("phase", delivery.Phase.Name);
            json.WriteStartArray("walls");
            foreach (var wall in delivery.Phase.Walls)
            {
                json.WriteStringValue(wall);
            }

            json.WriteEndArray();
            json.Line("joints", line => Joints(line, delivery.Joints));
            json.Lines("lines", delivery.Lines, Line);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Groups(Utf8JsonWriter json, string name, string key, ImmutableArray<OrderGroup> groups)
    {
        json.WriteStartArray(name);
        foreach (var group in groups)
        {
            json.WriteStartObject();
            json.WriteString(key, group.Name);
            json.Line("joints", line => Joints(line, group.Joints));
            json.Lines("lines", group.Lines, Line);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Line(Utf8JsonWriter json, OrderLine line)
    {
        json.WriteString("item", JsonNames.Of(line.Key.Item));
        json.WriteString("product", line.Key.Product);
        foreach (var (name, length) in (ReadOnlySpan<(string, Units.Length?)>)[("width", line.Key.Width), ("length", line.Key.Length), ("height", line.Key.Height)])
        {
            if (length is { } given)
            {
                json.Member(name, given);
            }
        }

        if (line.Key.Mark.Length > 0)
        {
            json.WriteString("mark", line.Key.Mark);
        }

        json.WriteString("unit", JsonNames.Of(line.Key.Unit));
        Member(json, "net", line.Net);
        json.Member("waste", line.Waste);
        Member(json, "gross", line.Gross);
        if (line.Packs is { } packs)
        {
            json.WriteNumber("packs", packs.Count);
            json.Member("packContent", packs.Content);
            json.Member("leftOver", packs.LeftOver);
        }

        if (line.MassEach is { } mass)
        {
            json.Member("massEach", mass);
        }

        if (line.IsOverLiftLimit)
        {
            json.WriteBoolean("overLiftLimit", true);
        }
    }

    private static void Member(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.Member(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Joints(Utf8JsonWriter json, JointSums joints)
    {
        json.Member("bedArea", joints.BedArea);
        json.Member("headArea", joints.HeadArea);
        json.Member("bedVolume", joints.BedVolume);
        json.Member("headVolume", joints.HeadVolume);
        json.Member("levellingArea", joints.LevellingArea);
        json.Member("levellingVolume", joints.LevellingVolume);
    }

    private static void BarStock(Utf8JsonWriter json, BarsOfStock bars)
    {
        json.WriteString("size", bars.Size.Name);
        json.WriteString("steel", bars.Steel);
        json.Member("stock", bars.Stock);
        json.WriteNumber("count", bars.Count);
        json.WriteNumber("least", bars.Least);
        json.WriteStartArray("cuts");
        foreach (var cut in bars.Cuts)
        {
            json.WriteStartObject();
            json.WriteNumber("count", cut.Count);
            json.Member("marks", cut.Marks);
            json.Member("offcut", cut.Offcut);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Member("tooLong", bars.TooLong);
    }

    private static void Sawn(Utf8JsonWriter json, SawnUnit unit)
    {
        json.WriteNumber("n", unit.Number);
        json.WriteString("product", unit.Product);
        json.Member("width", unit.Width);
        json.Member("length", unit.Length);
        json.Member("height", unit.Height);
        json.WriteStartArray("pieces");
        foreach (var piece in unit.Pieces)
        {
            json.WriteStartArray();
            json.WriteStringValue(piece.Wall);
            json.WriteStringValue(piece.Piece);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
