namespace FixtureMaker.Step;

/// <summary>An enumeration value of the file, without its dots.</summary>
internal readonly record struct Keyword(string Name)
{
    public static readonly Keyword True = new("T");

    public static readonly Keyword False = new("F");
}
