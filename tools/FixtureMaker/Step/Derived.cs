namespace FixtureMaker.Step;

/// <summary>The asterisk of an attribute that a subtype derives.</summary>
internal sealed record Derived
{
    public static readonly Derived Value = new();
}
