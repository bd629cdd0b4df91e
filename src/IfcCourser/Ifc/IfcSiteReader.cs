using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>Reads what walls are set out from: slabs, grid axes, the place on the map, true north.</summary>
internal sealed class IfcSiteReader
{
    /// <summary>Scales of map projections differ from 1 by less than this; others are mistakes of units.</summary>
    private const double LargestDistortion = 0.01;

    private readonly IfcInstances _instances;
    private readonly IfcProducts _products;
    private readonly IfcUnits _units;
    private readonly IfcPlacements _placements;

    public IfcSiteReader(IfcInstances instances, IfcPlacements placements, IfcUnits units, List<Finding> findings)
    {
        _instances = instances;
        _units = units;
        _placements = placements;
        _products = new IfcProducts(instances, placements, findings);
    }

    /// <summary>Slabs with a shape, in the order of the file.</summary>
    public ImmutableArray<IfcSlabRecord> Slabs() =>
    [
        .. _instances.All("IFCSLAB")
            .Select(slab => new IfcSlabRecord(
                slab.Id, IfcProducts.GlobalId(slab), slab.Label("Name"), slab["PredefinedType"].AsEnumeration, _products.Placement(slab), _products.Representation(slab)))
            .Where(slab => slab.Representation is not null),
    ];

    /// <summary>Straight axes of all grids, in the order of the file; an axis that several grids repeat is listed once.</summary>
    public ImmutableArray<IfcGridAxisRecord> GridAxes()
    {
        var curves = new CurveReader(new ShapeSource(_instances.File, _units.LengthMm, _units.AngleRadians));
        return
        [
            .. _instances.All("IFCGRID")
                .SelectMany(grid => new[] { ('U', grid["UAxes"]), ('V', grid["VAxes"]), ('W', grid["WAxes"]) }
                    .SelectMany(family => family.Item2.AsList.Select(axis => Axis(axis, family.Item1, _products.Placement(grid), curves))))
                .OfType<IfcGridAxisRecord>()
                .DistinctBy(axis => (axis.Tag, Rounded(axis.From), Rounded(axis.To))),
        ];
    }

    /// <summary>The first IfcMapConversion; null where the model has none (before IFC4 there is none).</summary>
    /// <remarks>
    /// Places of attributes, in IFC4 ADD2 TC1 and IFC4X3 ADD2 alike: IfcMapConversion SourceCRS, TargetCRS, Eastings, Northings,
    /// OrthogonalHeight, XAxisAbscissa, XAxisOrdinate, Scale; IfcProjectedCRS Name, Description, GeodeticDatum, VerticalDatum,
    /// MapProjection, MapZone, MapUnit.
    /// </remarks>
    public IfcMapConversionRecord? Map()
    {
        const int MapUnit = 6;
        var map = _instances.All("IFCMAPCONVERSION", "IFCMAPCONVERSIONSCALED").Select(entity => entity.Arguments).FirstOrDefault(HasPlace);
        if (map.IsDefault)
        {
            return null;
        }

        var system = _instances.Follow(map[1])?.Arguments ?? [];
        var unit = system.Length > MapUnit && _instances.Follow(system[MapUnit]) is { } named ? IfcUnitReader.Factor(_instances, named, "LENGTHUNIT") : null;
        var mapMm = unit is { } metres ? Math.Round(metres * 1000, 9) : _units.LengthMm;
        var along = new Vector2(map[5].AsReal ?? 1, map[6].AsReal ?? 0).Unit();
        var scale = Scale(map[7].AsReal ?? 1, mapMm / _units.LengthMm);
        return new IfcMapConversionRecord(
            system.Length > 0 ? IfcEntity.Label(system[0]) : null, map[2].AsReal!.Value * mapMm, map[3].AsReal!.Value * mapMm, (map[4].AsReal ?? 0) * mapMm,
            along.Length > 0 ? along : new Vector2(1, 0), scale ?? 1, scale is not null);

        static bool HasPlace(ImmutableArray<StepValue> values) =>
            values.Length > 7 && IsOnEarth(values[2].AsReal) && IsOnEarth(values[3].AsReal) && IsOnEarth(values[4].AsReal ?? 0);

        // In any unit from the millimetre on.
        static bool IsOnEarth(double? coordinate) => coordinate is { } value && Math.Abs(value) <= 1e11;
    }

    /// <summary>Direction of true north in the model's axes, a unit vector; null where the model names none.</summary>
    public Vector2? TrueNorth() => _instances.All("IFCGEOMETRICREPRESENTATIONCONTEXT")
        .Where(context => context.Label("ContextType") is "Model")
        .Select(context => _placements.Direction(context["TrueNorth"])?.Plan.Unit())
        .FirstOrDefault(north => north is { Length: > 0 });

    /// <summary>
    /// The projection's own scale. By the standard Scale also turns the model's unit into the map's; many programs leave that
    /// out, so both readings are tried.
    /// </summary>
    private static double? Scale(double stated, double mapPerModel) =>
        Math.Abs((stated * mapPerModel) - 1) < LargestDistortion ? stated * mapPerModel
        : Math.Abs(stated - 1) < LargestDistortion ? stated
        : null;

    private IfcGridAxisRecord? Axis(StepValue reference, char family, Transform3 placement, CurveReader curves)
    {
        if (_instances.Follow(reference) is not { } axis || curves.Chain(axis["AxisCurve"]) is not { Length: 2 } chain)
        {
            return null;
        }

        return new IfcGridAxisRecord(axis.Id, axis.Label("AxisTag") ?? string.Empty, family, placement.Point(chain[0]), placement.Point(chain[1]));
    }

    private static (long, long) Rounded(Vector3 point) => ((long)Math.Round(point.X), (long)Math.Round(point.Y));
}
