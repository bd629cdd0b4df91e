using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Page;

/// <summary>An opening with the tag of its wall's sheet.</summary>
internal sealed record PageOpening(PageWall Wall, OpeningLayout Opening, string Tag)
{
    /// <summary>Id of its row.</summary>
    public string Id => FormattableString.Invariant($"o{Wall.Number}-{Tag}");

    public Length Left => Opening.Placed.Left - Opening.Design.Left;

    public Length Right => Opening.Placed.Right - Opening.Design.Right;

    public Length Sill => Opening.Placed.Bottom - Opening.Design.Bottom;

    public Length Head => Opening.Placed.Top - Opening.Design.Top;

    /// <summary>The largest way that an edge was moved.</summary>
    public Length Shift => new[] { Left, Right, Sill, Head }.Select(Length.Abs).Max();

    public OpeningState State(LayoutRules rules)
    {
        if (!Opening.Interrupts)
        {
            return OpeningState.NotCoursed;
        }

        return !Opening.OnModule && Farthest(rules) > rules.ModuleTolerance ? OpeningState.Off
            : Shift > Length.Zero ? OpeningState.Moved
            : OpeningState.OnModule;
    }

    /// <summary>How far the wanted edges are from their lines.</summary>
    public OpeningDeviation Deviation(LayoutRules rules) => OpeningDeviation.Of(Wall.Wall, Opening, rules);

    private Length Farthest(LayoutRules rules)
    {
        var deviation = Deviation(rules);
        return Length.Max(Length.Abs(deviation.Left), Length.Abs(deviation.Right));
    }
}
