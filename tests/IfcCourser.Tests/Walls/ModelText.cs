using System.Globalization;
using System.Text;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>Writes small IFC4 models for tests: lengths are given in mm and written in the model's unit.</summary>
internal sealed class ModelText
{
    private readonly List<string> _lines = [];
    private readonly double _unitMm;

    public ModelText(double unitMm = 1, double east = 0, double north = 0)
    {
        _unitMm = unitMm;
        East = east;
        North = north;
        var unit = unitMm switch
        {
            1 => Add("IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.)"),
            1000 => Add("IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.)"),
            _ => Foot(unitMm),
        };
        Add($"IFCPROJECT('0project0000000000000A',$,'Invented',$,$,$,$,$,#{Add($"IFCUNITASSIGNMENT((#{unit}))")})");
    }

    /// <summary>Added to every wall's place, mm.</summary>
    public double East { get; }

    public double North { get; }

    /// <summary>As the header names it.</summary>
    public string Schema { get; init; } = "IFC4";

    /// <summary>Turns the file's instances round before it is read: their order means nothing.</summary>
    public bool Backwards { get; init; }

    public int Add(string instance)
    {
        _lines.Add(instance);
        return _lines.Count;
    }

    public int Point(params double[] mm) => Add($"IFCCARTESIANPOINT(({string.Join(",", mm.Select(Length))}))");

    public int Direction(params double[] ratios) => Add($"IFCDIRECTION(({string.Join(",", ratios.Select(Real))}))");

    /// <summary>An axis placement; the z axis up unless given.</summary>
    public int Axes(double x, double y, double z, double[]? along = null, double[]? up = null) =>
        Add($"IFCAXIS2PLACEMENT3D(#{Point(x, y, z)},#{Direction(up ?? [0, 0, 1])},#{Direction(along ?? [1, 0, 0])})");

    public int Polyline(params (double X, double Y)[] loop) =>
        Add($"IFCPOLYLINE(({string.Join(",", loop.Append(loop[0]).Select(p => $"#{Point(p.X, p.Y)}"))}))");

    /// <summary>A polygon in plan, or in the plane of the axes given, extruded along their z.</summary>
    public int Extruded(double height, (double X, double Y)[] loop, int? axes = null)
    {
        var profile = Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{Polyline(loop)})");
        return Add($"IFCEXTRUDEDAREASOLID(#{profile},#{axes ?? Axes(0, 0, 0)},#{Direction(0, 0, 1)},{Length(height)})");
    }

    public int Box(double x0, double y0, double z0, double x1, double y1, double z1) =>
        Extruded(z1 - z0, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], Axes(0, 0, z0));

    /// <summary>A solid without what lies beyond a plane, on the side its normal points to.</summary>
    public int Clipped(int solid, (double X, double Y, double Z) point, double[] normal)
    {
        double[] along = Math.Abs(normal[0]) > 0.9 ? [0, 1, 0] : [1, 0, 0];
        var plane = Add($"IFCPLANE(#{Axes(point.X, point.Y, point.Z, along, normal)})");
        return Add($"IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#{solid},#{Add($"IFCHALFSPACESOLID(#{plane},.F.)")})");
    }

    /// <summary>A wall of one item that runs from a point in a direction.</summary>
    public int Wall(string name, int item, double x = 0, double y = 0, double z = 0, double[]? along = null, string kind = "SweptSolid", string? material = "Block")
    {
        var wall = Add($"IFCWALL('{Guid(name)}',$,'{name}',$,$,#{Place(East + x, North + y, z, along)},#{Shape(item, kind)},$,$)");
        if (material is not null)
        {
            Material(wall, Add($"IFCMATERIAL('{material}',$,$)"));
        }

        return wall;
    }

    /// <summary>Gives an element a material, layer set usage or other material definition.</summary>
    public void Material(int element, int material) => Add($"IFCRELASSOCIATESMATERIAL('{Guid("m" + element)}',$,$,$,(#{element}),#{material})");

    /// <summary>A wall without a body of its own, aggregated from elements that have one.</summary>
    public int Aggregated(string name, string entity, params (string Part, int Item)[] parts)
    {
        var wall = Add($"{entity}('{Guid(name)}',$,'{name}',$,$,#{Place(East, North, 0, null)},$,$,$)");
        var ids = parts.Select(part => Add($"IFCBUILDINGELEMENTPART('{Guid(part.Part)}',$,'{part.Part}',$,$,#{Place(East, North, 0, null)},#{Shape(part.Item, "SweptSolid")},$,$)")).ToList();
        Add($"IFCRELAGGREGATES('{Guid("a" + name)}',$,$,$,#{wall},({string.Join(",", ids.Select(id => $"#{id}"))}))");
        return wall;
    }

    /// <summary>A straight wall with its right face on the line from a point.</summary>
    public int Straight(string name, double length, double thickness, double height, double x = 0, double y = 0, double z = 0, double[]? along = null, string? material = "Block") =>
        Wall(name, Box(0, 0, 0, length, thickness, height), x, y, z, along, material: material);

    /// <summary>Layers from the reference line y = 0 of the wall.</summary>
    public void Layers(int wall, double offset, bool positive, params (string Material, double Thickness)[] layers)
    {
        var set = string.Join(",", layers.Select(layer => $"#{Add($"IFCMATERIALLAYER(#{Add($"IFCMATERIAL('{layer.Material}',$,$)")},{Length(layer.Thickness)},$,$,$,$,$)")}"));
        var usage = Add($"IFCMATERIALLAYERSETUSAGE(#{Add($"IFCMATERIALLAYERSET(({set}),$,$)")},.AXIS2.,{(positive ? ".POSITIVE." : ".NEGATIVE.")},{Length(offset)},$)");
        Material(wall, usage);
    }

    /// <summary>An opening in the wall's own axes, with what fills it: IFCDOOR, IFCWINDOW or nothing.</summary>
    public int Opening(int wall, string name, int item, double x = 0, double y = 0, double z = 0, double[]? along = null, string? filling = null)
    {
        var opening = Add($"IFCOPENINGELEMENT('{Guid(name)}',$,'{name}',$,$,#{Place(East + x, North + y, z, along)},#{Shape(item, "SweptSolid")},$,.OPENING.)");
        Add($"IFCRELVOIDSELEMENT('{Guid("v" + name)}',$,$,$,#{wall},#{opening})");
        if (filling is not null)
        {
            Add($"IFCRELFILLSELEMENT('{Guid("r" + name)}',$,$,$,#{opening},#{Loose(filling, name, null)})");
        }

        return opening;
    }

    /// <summary>A door or window that no relation ties to an opening; an item is its body, in axes that run from a point in a direction.</summary>
    public int Loose(string kind, string name, int? item, double x = 0, double y = 0, double z = 0, double[]? along = null) => Add(
        $"{kind}('{Guid("f" + name)}',$,'{kind} {name}',$,$,#{Place(East + x, North + y, z, along)},{(item is { } body ? $"#{Shape(body, "SweptSolid")}" : "$")},$,$,$,$,$,$)");

    public IfcModel Read()
    {
        var text = new StringBuilder($"ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('t','2026-01-01T00:00:00',(''),(''),'','','');\nFILE_SCHEMA(('{Schema}'));\nENDSEC;\nDATA;\n");
        var lines = _lines.Select((line, i) => $"#{i + 1}={line};\n");
        text.AppendJoin(string.Empty, Backwards ? lines.Reverse() : lines).Append("ENDSEC;\nEND-ISO-10303-21;\n");
        var outcome = IfcModel.Read("test.ifc", Encoding.UTF8.GetBytes(text.ToString()));
        Assert.True(outcome.IsOk, outcome.Fault?.ToString());
        return outcome.Value;
    }

    public WallModel Walls(WallSelection? selection = null)
    {
        using var model = Read();
        return WallReader.Read(model, selection ?? new WallSelection { Width = WidthMatch.Any }, BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
    }

    public int Shape(int item, string kind) =>
        Add($"IFCPRODUCTDEFINITIONSHAPE($,$,(#{Add($"IFCSHAPEREPRESENTATION($,'Body','{kind}',(#{item}))")}))");

    public string Length(double mm) => Real(mm / _unitMm);

    private static string Guid(string name) => name.PadRight(22, '0')[..22];

    private static string Real(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) || text.Contains('E', StringComparison.Ordinal) ? text : text + ".";
    }

    private int Place(double x, double y, double z, double[]? along) => Add($"IFCLOCALPLACEMENT($,#{Axes(x, y, z, along)})");

    private int Foot(double mm)
    {
        var metre = Add("IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.)");
        var factor = Add($"IFCMEASUREWITHUNIT(IFCLENGTHMEASURE({Real(mm / 1000)}),#{metre})");
        return Add($"IFCCONVERSIONBASEDUNIT(#{Add("IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0)")},.LENGTHUNIT.,'FOOT',#{factor})");
    }
}
