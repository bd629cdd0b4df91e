using IfcCourser.Geometry;

namespace IfcCourser.Modules;

/// <summary>An opening to be put on module lines, or one that stays and must not be crowded.</summary>
/// <param name="Design">The masonry opening wanted, its heights settled, along the run that its lines are counted on.</param>
/// <param name="Run">Its wall's run, counted the same way.</param>
/// <param name="Wall">Its wall: openings of one wall must not crowd each other.</param>
/// <param name="Stack">Openings of one stack move together.</param>
/// <param name="IsFixed">It stays, wherever the lines are.</param>
internal readonly record struct MovableOpening(ElevationRect Design, Interval Run, int Wall, int Stack, bool IsFixed = false);
