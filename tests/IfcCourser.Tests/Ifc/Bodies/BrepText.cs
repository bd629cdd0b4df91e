using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Writes advanced breps about the z axis for tests.</summary>
internal sealed class BrepText(ModelText text)
{
    private readonly Dictionary<int, int> _points = [];

    public int Vertex(double x, double y, double z)
    {
        var point = text.Point(x, y, z);
        var vertex = text.Add($"IFCVERTEXPOINT(#{point})");
        _points[vertex] = point;
        return vertex;
    }

    /// <summary>A vertex at a radius and an angle in degrees.</summary>
    public int At(double radius, double degrees, double z) =>
        Vertex(radius * Math.Cos(degrees * Math.PI / 180), radius * Math.Sin(degrees * Math.PI / 180), z);

    public int Line(int from, int to)
    {
        var line = text.Add($"IFCPOLYLINE((#{_points[from]},#{_points[to]}))");
        return text.Add($"IFCEDGECURVE(#{from},#{to},#{line},.T.)");
    }

    /// <summary>Counter-clockwise about the z axis.</summary>
    public int Arc(double radius, double z, int from, int to) =>
        text.Add($"IFCEDGECURVE(#{from},#{to},#{text.Add($"IFCCIRCLE(#{text.Axes(0, 0, z)},{text.Length(radius)})")},.T.)");

    /// <summary>Edges, each along its own direction or against it.</summary>
    public int Loop(params (int Edge, bool Along)[] edges) =>
        text.Add($"IFCEDGELOOP(({string.Join(",", edges.Select(edge => $"#{text.Add($"IFCORIENTEDEDGE(*,*,#{edge.Edge},{(edge.Along ? ".T." : ".F.")})")}"))}))");

    public int Face(int surface, int outer, params int[] inner)
    {
        var bounds = inner.Select(loop => $"#{text.Add($"IFCFACEBOUND(#{loop},.T.)")}").Prepend($"#{text.Add($"IFCFACEOUTERBOUND(#{outer},.T.)")}");
        return text.Add($"IFCADVANCEDFACE(({string.Join(",", bounds)}),#{surface},.T.)");
    }

    public int Flat() => text.Add($"IFCPLANE(#{text.Axes(0, 0, 0)})");

    public int Cylinder(double radius) => text.Add($"IFCCYLINDRICALSURFACE(#{text.Axes(0, 0, 0)},{text.Length(radius)})");

    public int ExtrudedArc(double radius)
    {
        var place = text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(0, 0)},$)");
        var circle = text.Add($"IFCCIRCLE(#{place},{text.Length(radius)})");
        var arc = text.Add($"IFCTRIMMEDCURVE(#{circle},(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(1.5707963267948966)),.T.,.PARAMETER.)");
        var profile = text.Add($"IFCARBITRARYOPENPROFILEDEF(.CURVE.,$,#{arc})");
        return text.Add($"IFCSURFACEOFLINEAREXTRUSION(#{profile},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},{text.Length(2500)})");
    }

    public Solid Read(int[] faces, out ImmutableArray<UnreadItem> unread)
    {
        var shell = text.Add($"IFCCLOSEDSHELL(({string.Join(",", faces.Select(face => $"#{face}"))}))");
        var shape = text.Shape(text.Add($"IFCADVANCEDBREP(#{shell})"), "AdvancedBrep");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        unread = body.Unread;
        return body.Solid;
    }
}
