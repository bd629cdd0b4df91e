using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>Advanced breps: faces on surfaces, edges on curves.</summary>
internal static class AdvancedBodies
{
    private static readonly Prism _arch = new([new(0, 0), new(4000, 0), new(4000, 2000), new(0, 2000)]);

    public static ImmutableArray<House> All =>
    [
        BodyCase.Of("advanced-brep", "a gable as an advanced brep of planes", "AdvancedBrep", file => [new Writer(file, Prism.Gable, ArchedEdge: null).Write()]),
        BodyCase.Of("advanced-brep-cylinder", "an arched top as an advanced brep", "AdvancedBrep", file => [new Writer(file, _arch, ArchedEdge: 2).Write()]),
    ];

    /// <summary>Writes a prism whose outline is straight, but for one edge that may be the arc of <see cref="SweptBodies"/>.</summary>
    private sealed record Writer(ModelFile File, Prism Prism, int? ArchedEdge)
    {
        private readonly Dictionary<(int From, int To), Reference> _edges = [];
        private ImmutableArray<Reference> _points = [];
        private ImmutableArray<Reference> _vertices = [];

        public Reference Write()
        {
            _points = [.. Prism.Corners.Select(p => File.Point(p[0], p[1], p[2]))];
            _vertices = [.. _points.Select(point => File.Step.Add("IFCVERTEXPOINT", point))];
            var faces = Prism.Faces.Select((face, i) => Face(face, isArched: i - 2 == ArchedEdge)).ToList();
            return File.Step.Add("IFCADVANCEDBREP", File.Step.Add("IFCCLOSEDSHELL", new object[] { faces }));
        }

        private Reference Face(ImmutableArray<int> corners, bool isArched)
        {
            var edges = corners.Select((from, i) => Oriented(from, corners[(i + 1) % corners.Length])).ToList();
            var loop = File.Step.Add("IFCEDGELOOP", new object[] { edges });
            var bound = File.Step.Add("IFCFACEOUTERBOUND", loop, Keyword.True);
            return File.Step.Add("IFCADVANCEDFACE", new[] { bound }, isArched ? Cylinder() : Plane(corners), Keyword.True);
        }

        private Reference Oriented(int from, int to)
        {
            var isForward = !_edges.ContainsKey((to, from));
            var key = isForward ? (from, to) : (to, from);
            if (!_edges.TryGetValue(key, out var edge))
            {
                var n = Prism.Outline.Length;
                var isArched = from % n != to % n && Math.Min(from % n, to % n) == ArchedEdge;
                edge = File.Step.Add("IFCEDGECURVE", _vertices[from], _vertices[to], isArched ? Circle(from) : Line(from, to), Sense(isArched, from, to));
                _edges.Add(key, edge);
            }

            return File.Step.Add("IFCORIENTEDEDGE", Derived.Value, Derived.Value, edge, isForward ? Keyword.True : Keyword.False);
        }

        // The circle turns like the outline on the right face.
        private static Keyword Sense(bool isArched, int from, int to) => isArched && to < from ? Keyword.False : Keyword.True;

        private Reference Line(int from, int to)
        {
            var (a, b) = (Prism.Corners[from], Prism.Corners[to]);
            double[] run = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
            var length = Math.Sqrt(run.Sum(part => part * part));
            return File.Step.Add("IFCLINE", _points[from], File.Step.Add("IFCVECTOR", Unit(run, length), length));
        }

        private Reference Circle(int from) => File.Step.Add("IFCCIRCLE", ArchAxes(Prism.Corners[from][1]), SweptBodies.ArchRadius);

        private Reference Cylinder() => File.Step.Add("IFCCYLINDRICALSURFACE", ArchAxes(BodyCase.Right), SweptBodies.ArchRadius);

        private Reference ArchAxes(double y) => BodyPart.UprightAxes(File, SweptBodies.ArchCentre.X, y, SweptBodies.ArchCentre.Y);

        private Reference Plane(ImmutableArray<int> corners)
        {
            var (a, b, c) = (Prism.Corners[corners[0]], Prism.Corners[corners[1]], Prism.Corners[corners[^1]]);
            double[] u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
            double[] v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
            double[] normal = [(u[1] * v[2]) - (u[2] * v[1]), (u[2] * v[0]) - (u[0] * v[2]), (u[0] * v[1]) - (u[1] * v[0])];
            var axes = File.Axes(
                _points[corners[0]], Unit(normal, Math.Sqrt(normal.Sum(part => part * part))), Unit(u, Math.Sqrt(u.Sum(part => part * part))));
            return File.Step.Add("IFCPLANE", axes);
        }

        private Reference Unit(double[] vector, double length) => File.Direction(vector[0] / length, vector[1] / length, vector[2] / length);
    }
}
