namespace IfcCourser.Coursing;

/// <summary>Which of a corner's two walls runs through in odd courses of the group's lines; the other does in even ones.</summary>
internal enum CornerTurn
{
    FirstInOdd,
    SecondInOdd,
}
