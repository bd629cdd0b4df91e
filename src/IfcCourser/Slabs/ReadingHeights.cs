namespace IfcCourser.Slabs;

/// <summary>What the heights of readings are counted from.</summary>
public enum ReadingHeights
{
    /// <summary>The model's zero.</summary>
    Model,

    /// <summary>The zero of the model's map conversion.</summary>
    Survey,

    /// <summary>A bench mark of their own: how high it stands in the model is not known.</summary>
    Bench,
}
