using System.Collections.Immutable;
using System.Security.Cryptography;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>A model as its file states it: identity, units and walls; everything else by instance number.</summary>
public sealed class IfcModel : IDisposable
{
    private readonly List<Finding> _findings = [];
    private readonly IfcPlacements _placements;
    private readonly IfcWallReader _reader;

    private IfcModel(string path, Task<string> sha256, StepFile file, IfcSchema schema)
    {
        FileName = Path.GetFileName(path);
        Instances = new IfcInstances(file, schema);
        var project = Instances.All("IFCPROJECT").Select(entity => (IfcEntity?)entity).FirstOrDefault();
        ProjectId = project?.Label("GlobalId");
        ProjectName = project?.Label("Name") ?? project?.Label("LongName");
        Units = IfcUnitReader.Read(Instances, project, _findings);
        _placements = new IfcPlacements(Instances, Units.LengthMm, _findings);
        _reader = new IfcWallReader(Instances, new IfcRelations(Instances), _placements, Units, _findings);
        Walls = _reader.Read();
        LooseFillings = _reader.LooseFillings();
        var site = new IfcSiteReader(Instances, _placements, Units, _findings);
        Slabs = site.Slabs();
        GridAxes = site.GridAxes();
        Map = site.Map();
        TrueNorth = site.TrueNorth();
        Sha256 = sha256.Result;
    }

    /// <summary>Without folders.</summary>
    public string FileName { get; }

    /// <summary>Of the file as opened, zipped or not; lower-case hex.</summary>
    public string Sha256 { get; }

    public IfcInstances Instances { get; }

    public StepFile File => Instances.File;

    public IfcSchema Schema => Instances.Schema;

    /// <summary>IFC2X3, IFC4 or IFC4X3.</summary>
    public string SchemaName => Schema.ToString().ToUpperInvariant();

    public IfcUnits Units { get; }

    /// <summary>GlobalId of the IfcProject.</summary>
    public string? ProjectId { get; }

    public string? ProjectName { get; }

    /// <summary>The header's time stamp as written.</summary>
    public string TimeStamp => IfcEntity.Shortened(File.Header.TimeStamp);

    /// <summary>Every wall, in the order of the file.</summary>
    public ImmutableArray<IfcWallRecord> Walls { get; }

    /// <summary>Doors and windows that fill no opening, in the order of the file.</summary>
    public ImmutableArray<IfcFillingRecord> LooseFillings { get; }

    /// <summary>Slabs with a shape, in the order of the file.</summary>
    public ImmutableArray<IfcSlabRecord> Slabs { get; }

    /// <summary>Straight axes of all grids, in the order of the file.</summary>
    public ImmutableArray<IfcGridAxisRecord> GridAxes { get; }

    /// <summary>Where the model lies on a map; null where it does not say.</summary>
    public IfcMapConversionRecord? Map { get; }

    /// <summary>Direction of true north in the model's axes, a unit vector; null where the model names none.</summary>
    public Vector2? TrueNorth { get; }

    /// <summary>What is wrong with the file and what was assumed; grows while instances are read.</summary>
    public ImmutableArray<Finding> Findings =>
    [
        .. File.Faults.Select(fault => new Finding(FindingCodes.InstanceSkipped, fault.ToString())),
        .. _findings.Distinct(),
    ];

    /// <summary>Opens a .ifc file or a zip archive that holds one.</summary>
    public static Outcome<IfcModel> Open(string path)
    {
        if (IfcZip.IsZip(path))
        {
            var unzipped = IfcZip.Read(path);
            return unzipped.IsOk ? Read(path, _ => unzipped.Value.Sha256, StepFile.Read(path, unzipped.Value.Bytes)) : unzipped.Fault;
        }

        var file = StepFile.Open(path);
        return file.IsOk ? Read(path, Hash, file) : file.Fault;
    }

    /// <summary>Reads a .ifc file in memory.</summary>
    /// <param name="name">What faults call it.</param>
    public static Outcome<IfcModel> Read(string name, ReadOnlyMemory<byte> bytes)
    {
        var file = StepFile.Read(name, bytes);
        return file.IsOk ? Read(name, Hash, file) : file.Fault;
    }

    /// <summary>The instance with a number; null where there is none or it is malformed.</summary>
    public IfcEntity? Find(long? id) => Instances.Find(id);

    /// <summary>The instance that a value refers to; null where it is no reference or leads nowhere.</summary>
    public IfcEntity? Follow(StepValue reference) => Instances.Follow(reference);

    /// <summary>From an object's own axes to the model's, mm; identity for null.</summary>
    /// <param name="placement">Instance number of an IfcObjectPlacement.</param>
    public Transform3 Placement(long? placement) => _placements.Absolute(placement);

    /// <summary>An IfcAxis2Placement2D or 3D in the axes it is written in, mm; identity where there is none.</summary>
    public Transform3 Axes(StepValue reference) => _placements.Axes(reference);

    /// <summary>An IfcCartesianPoint in mm, z = 0 where it has two coordinates; null where it can't be read.</summary>
    public Vector3? Point(StepValue reference) => _placements.Point(reference);

    /// <summary>An IfcDirection as a unit vector; null where it can't be read or has no length.</summary>
    public Vector3? Direction(StepValue reference) => _placements.Direction(reference);

    /// <summary>Property and quantity sets of an element, then those of its type.</summary>
    public ImmutableArray<IfcPropertyGroup> PropertySets(long element) => _reader.PropertySets(element);

    public void Dispose() => File.Dispose();

    /// <param name="hash">Of the file as opened; while the model is read.</param>
    private static Outcome<IfcModel> Read(string path, Func<StepFile, string> hash, Outcome<StepFile> file)
    {
        if (!file.IsOk)
        {
            return file.Fault;
        }

        if (SchemaOf(file.Value.Header.Schemas) is { } schema)
        {
            return new IfcModel(path, Task.Run(() => hash(file.Value)), file.Value, schema);
        }

        var named = IfcEntity.Shortened(string.Join(", ", file.Value.Header.Schemas));
        file.Value.Dispose();
        return new Fault(
            path, null, null, named.Length == 0 ? "the header names no schema" : $"the schema {named} is not read", "Export the model as IFC2X3, IFC4 or IFC4X3.");
    }

    private static IfcSchema? SchemaOf(ImmutableArray<string> names) =>
        names.Select(name => name.ToUpperInvariant()).Select(name => name switch
        {
            _ when name.StartsWith("IFC2X3", StringComparison.Ordinal) => IfcSchema.Ifc2X3,
            _ when name.StartsWith("IFC4X3", StringComparison.Ordinal) => IfcSchema.Ifc4X3,
            _ when name.StartsWith("IFC4", StringComparison.Ordinal) && !name.StartsWith("IFC4X", StringComparison.Ordinal) => IfcSchema.Ifc4,
            _ => (IfcSchema?)null,
        }).FirstOrDefault(schema => schema is not null);

    private static string Hash(StepFile file)
    {
        const int Chunk = 1 << 24;
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        for (long at = 0; at < file.Size; at += Chunk)
        {
            hash.AppendData(file.Bytes(at, (int)Math.Min(Chunk, file.Size - at)));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
