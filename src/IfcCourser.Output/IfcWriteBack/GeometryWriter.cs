using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>Adds points, directions, placements and curves, in the model's length unit.</summary>
internal sealed class GeometryWriter
{
    private readonly IfcModel _model;
    private readonly StepAppender _appender;
    private readonly Dictionary<string, StepValue> _directions = new(StringComparer.Ordinal);
    private readonly Lazy<StepValue> _context;

    public GeometryWriter(IfcModel model, StepAppender appender)
    {
        _model = model;
        _appender = appender;
        _context = new Lazy<StepValue>(Context);
    }

    /// <summary>The model's context for bodies; the context that it is a part of, or a new one, where there is none.</summary>
    public StepValue BodyContext => _context.Value;

    public StepValue Add(string type, params ReadOnlySpan<StepValue> arguments) => StepValue.Reference(_appender.Add(type, arguments));

    /// <param name="mm">Millimetres.</param>
    public StepValue Number(double mm)
    {
        // Nine decimals are a nanometre of a metre; zero is added to have no minus before it.
        const int Decimals = 9;
        return StepValue.Real(Math.Round(mm / _model.Units.LengthMm, Decimals) + 0.0);
    }

    public StepValue Number(Length length) => Number(length.Mm);

    public StepValue Point(Vector3 point) =>
        Add("IFCCARTESIANPOINT", StepValue.List(Number(point.X), Number(point.Y), Number(point.Z)));

    public StepValue Point(Vector2 point) => Add("IFCCARTESIANPOINT", StepValue.List(Number(point.X), Number(point.Y)));

    /// <summary>Equal directions are written once.</summary>
    public StepValue Direction(Vector3 direction)
    {
        const int Decimals = 15;
        var ratios = StepValue.List(
            [.. new[] { direction.X, direction.Y, direction.Z }.Select(ratio => StepValue.Real(Math.Round(ratio, Decimals) + 0.0))]);
        var key = StepEncoder.Encode(ratios);
        if (!_directions.TryGetValue(key, out var written))
        {
            written = Add("IFCDIRECTION", ratios);
            _directions.Add(key, written);
        }

        return written;
    }

    public StepValue Axes(Transform3 place) =>
        Add("IFCAXIS2PLACEMENT3D", Point(place.Origin), Direction(place.Z), Direction(place.X));

    /// <param name="relativeTo">A placement, or <c>$</c> for the model's axes.</param>
    public StepValue Placement(StepValue relativeTo, Transform3 local) => Add("IFCLOCALPLACEMENT", relativeTo, Axes(local));

    public StepValue Polyline(IEnumerable<Vector2> points) => Add("IFCPOLYLINE", StepValue.List([.. points.Select(Point)]));

    public StepValue Polyline(IEnumerable<Vector3> points) => Add("IFCPOLYLINE", StepValue.List([.. points.Select(Point)]));

    private StepValue Context()
    {
        var instances = _model.Instances;
        var body = instances.All("IFCGEOMETRICREPRESENTATIONSUBCONTEXT")
            .Where(context => context["ContextIdentifier"].AsString is "Body" && context["TargetView"].AsEnumeration is "MODEL_VIEW")
            .Concat(instances.All("IFCGEOMETRICREPRESENTATIONCONTEXT").Where(context => context["ContextType"].AsString is "Model"))
            .Concat(instances.All("IFCGEOMETRICREPRESENTATIONCONTEXT").Where(context => context["CoordinateSpaceDimension"].AsInteger is 3))
            .Select(context => (long?)context.Id)
            .FirstOrDefault();
        const double Precision = 0.01;
        return body is { } id
            ? StepValue.Reference(id)
            : Add(
                "IFCGEOMETRICREPRESENTATIONCONTEXT", StepValue.Omitted, StepValue.String("Model"), StepValue.Integer(3), Number(Precision),
                Axes(Transform3.Identity), StepValue.Omitted);
    }
}
