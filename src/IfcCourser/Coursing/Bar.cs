using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A vertical bar that head joints keep clear of.</summary>
internal readonly record struct Bar(Length At, Length Bottom, Length Top)
{
    public bool Passes(CourseBand band) => band.Top > Bottom && band.Bottom < Top;
}
