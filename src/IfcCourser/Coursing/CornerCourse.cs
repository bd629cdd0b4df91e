using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What stands of a course where a wall turns a corner; model heights.</summary>
/// <param name="Line">Of the group.</param>
/// <param name="Foot">Where its mortar starts: the wall's base under a first course.</param>
/// <param name="Bottom">Where its pieces start.</param>
/// <param name="Whole">How high it stands over the whole corner: under a slope lower than its top.</param>
/// <param name="Top">Where its pieces end.</param>
/// <param name="IsOpen">Whether an opening reaches into the corner there.</param>
internal readonly record struct CornerCourse(int Line, Length Foot, Length Bottom, Length Whole, Length Top, bool IsOpen = false);
