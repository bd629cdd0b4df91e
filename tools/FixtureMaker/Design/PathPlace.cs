namespace FixtureMaker.Design;

/// <summary>Where along a wall's path another one meets it.</summary>
internal enum PathPlace
{
    AtStart,
    AtEnd,
    AtPath,
}
