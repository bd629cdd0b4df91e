namespace IfcCourser.Rules;

/// <summary>The steps from a door leaf or sash out to the masonry.</summary>
/// <param name="Void">What the void of the model is taken for; steps inside it don't count.</param>
/// <param name="Frame">From the leaf to the outside of the frame.</param>
/// <param name="Shim">From the frame to the rough opening.</param>
/// <param name="Buck">From the rough opening to the masonry.</param>
public sealed record FillingAllowance(VoidMeaning Void, Margin Frame, Margin Shim, Margin Buck)
{
    /// <summary>What the masonry opening is larger than the void.</summary>
    public Margin Total => Void switch
    {
        VoidMeaning.Masonry => default,
        VoidMeaning.Rough => Buck,
        VoidMeaning.Frame => Shim + Buck,
        _ => Frame + Shim + Buck,
    };
}
