namespace IfcCourser.Catalogs;

/// <summary>How a unit comes by its core.</summary>
public enum CoredUnits
{
    /// <summary>Bored on site: a cored unit is ordered as a plain one.</summary>
    Site,

    /// <summary>Made in the works: a product of its own.</summary>
    Factory,

    /// <summary>Every unit is hollow and has its cells.</summary>
    Cells,
}
