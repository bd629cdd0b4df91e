namespace IfcCourser.Ifc;

/// <summary>What the model's units are in ours.</summary>
/// <param name="LengthMm">Millimetres in the length unit.</param>
/// <param name="AngleRadians">Radians in the plane angle unit.</param>
/// <param name="AreaM2">Square metres in the area unit.</param>
/// <param name="VolumeM3">Cubic metres in the volume unit.</param>
/// <param name="HasLength">Whether the project names a length unit; else metres are assumed.</param>
/// <param name="HasArea">Whether the project names an area unit; else square metres are assumed.</param>
/// <param name="HasVolume">Whether the project names a volume unit; else cubic metres are assumed.</param>
public sealed record IfcUnits(
    double LengthMm, double AngleRadians, double AreaM2, double VolumeM3, bool HasLength, bool HasArea, bool HasVolume);
