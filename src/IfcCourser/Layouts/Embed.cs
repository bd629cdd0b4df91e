using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Something to be built in that others design: printed, not designed here.</summary>
/// <param name="Kind">Strap, bolt, sleeve: in the user's words.</param>
/// <param name="At">Along the wall's run.</param>
/// <param name="Z">Above the wall's base.</param>
/// <param name="Note">In the user's words; may be empty.</param>
/// <param name="Size">In the user's words; may be empty.</param>
public sealed record Embed(string Kind, Length At, Length Z, string Note, string Size)
{
    /// <summary>As it is counted: kind and size.</summary>
    public string Product => Size.Length == 0 ? Kind : $"{Kind} {Size}";
}
