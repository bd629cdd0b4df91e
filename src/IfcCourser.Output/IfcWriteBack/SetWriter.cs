using IfcCourser.Ifc;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>Adds property and quantity sets, in the model's units, and the relations that tie them to elements.</summary>
internal sealed class SetWriter
{
    private readonly StepAppender _appender;
    private readonly IfcModel _model;
    private readonly IfcGuid _guids;
    private readonly StepValue _ownerHistory;
    private readonly Dictionary<string, StepValue> _siUnits = new(StringComparer.Ordinal);
    private readonly Dictionary<string, StepValue> _properties = new(StringComparer.Ordinal);

    public SetWriter(IfcModel model, StepAppender appender, IfcGuid guids, StepValue ownerHistory)
    {
        _model = model;
        _appender = appender;
        _guids = guids;
        _ownerHistory = ownerHistory;
    }

    public static StepValue Label(string text) => StepValue.Typed("IFCLABEL", StepValue.String(text));

    public static StepValue Text(string text) => StepValue.Typed("IFCTEXT", StepValue.String(text));

    public static StepValue Identifier(string text) => StepValue.Typed("IFCIDENTIFIER", StepValue.String(text));

    public static StepValue Boolean(bool value) => StepValue.Typed("IFCBOOLEAN", StepValue.Enumeration(value ? "T" : "F"));

    public static StepValue Count(int value) => StepValue.Typed("IFCCOUNTMEASURE", StepValue.Integer(value));

    /// <summary>A property; equal ones are written once and shared, as IfcProperty allows.</summary>
    public StepValue Property(string name, StepValue value) => Property(name, value, StepValue.Omitted);

    /// <summary>A property that is a length.</summary>
    public StepValue Property(string name, Length value) =>
        Property(name, StepValue.Typed("IFCLENGTHMEASURE", InModelUnits(value)), LengthUnit());

    public StepValue QuantityLength(string name, Length value) => Quantity("IFCQUANTITYLENGTH", name, InModelUnits(value), LengthUnit());

    /// <param name="m2">Square metres.</param>
    public StepValue QuantityArea(string name, double m2) => Quantity(
        "IFCQUANTITYAREA", name, Real(m2 / _model.Units.AreaM2), _model.Units.HasArea ? StepValue.Omitted : SiUnit("AREAUNIT", "SQUARE_METRE"));

    /// <param name="m3">Cubic metres.</param>
    public StepValue QuantityVolume(string name, double m3) => Quantity(
        "IFCQUANTITYVOLUME", name, Real(m3 / _model.Units.VolumeM3), _model.Units.HasVolume ? StepValue.Omitted : SiUnit("VOLUMEUNIT", "CUBIC_METRE"));

    public StepValue QuantityCount(string name, int value) =>
        Quantity("IFCQUANTITYCOUNT", name, StepValue.Integer(value), StepValue.Omitted);

    /// <summary>A property set and its relation.</summary>
    /// <param name="host">GlobalId of the element that the set belongs to.</param>
    /// <param name="elements">Instance numbers.</param>
    public void PropertySet(string host, string name, IEnumerable<long> elements, params ReadOnlySpan<StepValue> properties)
    {
        var generator = Property("Generator", StepValue.Typed("IFCLABEL", Generator.Full));
        var set = _appender.Add("IFCPROPERTYSET", Guid(host, name), _ownerHistory, StepValue.String(name), StepValue.Omitted, StepValue.List([generator, .. properties]));
        Relate(host, name, elements, set);
    }

    /// <summary>A quantity set and its relation; its generator stands as the method of measurement.</summary>
    public void QuantitySet(string host, string name, IEnumerable<long> elements, params ReadOnlySpan<StepValue> quantities)
    {
        var set = _appender.Add(
            "IFCELEMENTQUANTITY", Guid(host, name), _ownerHistory, StepValue.String(name), StepValue.Omitted, Generator.Full, StepValue.List([.. quantities]));
        Relate(host, name, elements, set);
    }

    private static StepValue Real(double value)
    {
        // Nine decimals are finer than any unit of a building and hide the dust of a conversion.
        const int Decimals = 9;
        return StepValue.Real(Math.Round(value, Decimals));
    }

    private StepValue InModelUnits(Length value) => Real(value.Mm / _model.Units.LengthMm);

    private StepValue Property(string name, StepValue value, StepValue unit)
    {
        var key = $"{name}={StepEncoder.Encode(value)}";
        if (!_properties.TryGetValue(key, out var property))
        {
            property = StepValue.Reference(_appender.Add("IFCPROPERTYSINGLEVALUE", StepValue.String(name), StepValue.Omitted, value, unit));
            _properties.Add(key, property);
        }

        return property;
    }

    /// <summary>IFC2X3 has no Formula.</summary>
    private StepValue Quantity(string type, string name, StepValue value, StepValue unit) => StepValue.Reference(
        _model.Schema == IfcSchema.Ifc2X3
            ? _appender.Add(type, StepValue.String(name), StepValue.Omitted, unit, value)
            : _appender.Add(type, StepValue.String(name), StepValue.Omitted, unit, value, StepValue.Omitted));

    private void Relate(string host, string name, IEnumerable<long> elements, long set) => _appender.Add(
        "IFCRELDEFINESBYPROPERTIES",
        Guid(host, $"{name} relation"),
        _ownerHistory,
        StepValue.Omitted,
        StepValue.Omitted,
        StepValue.List([.. elements.Select(StepValue.Reference)]),
        StepValue.Reference(set));

    private StepValue Guid(string host, string role) => StepValue.String(_guids.For(host, role));

    private StepValue LengthUnit() => _model.Units.HasLength ? StepValue.Omitted : SiUnit("LENGTHUNIT", "METRE");

    /// <summary>A unit written only where the project lacks one of its kind.</summary>
    private StepValue SiUnit(string kind, string name)
    {
        if (!_siUnits.TryGetValue(kind, out var unit))
        {
            unit = StepValue.Reference(_appender.Add(
                "IFCSIUNIT", StepValue.Derived, StepValue.Enumeration(kind), StepValue.Omitted, StepValue.Enumeration(name)));
            _siUnits.Add(kind, unit);
        }

        return unit;
    }
}
