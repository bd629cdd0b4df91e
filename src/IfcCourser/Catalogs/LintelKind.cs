namespace IfcCourser.Catalogs;

/// <summary>What stands over an opening.</summary>
public enum LintelKind
{
    /// <summary>A bought lintel; nothing passes through it or its bearing.</summary>
    Solid,

    /// <summary>Trough units filled on site; bars may pass.</summary>
    Trough,

    /// <summary>A beam formed and cast on site, its courses left out.</summary>
    Formed,
}
