using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A cost for each head joint whose centre lies nearer than <paramref name="Reach"/> to <paramref name="Centre"/>.</summary>
internal readonly record struct JointZone(Length Centre, Length Reach, long Cost);
