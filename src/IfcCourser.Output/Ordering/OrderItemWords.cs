using IfcCourser.Layouts;

namespace IfcCourser.Output.Ordering;

/// <summary>What buyers call the items of an order; files that programs read have the names of <see cref="OrderItem"/>.</summary>
internal static class OrderItemWords
{
    public static string Of(OrderItem item) => item switch
    {
        OrderItem.FullUnit => "Whole unit",
        OrderItem.PartUnit => "Part unit",
        OrderItem.TroughUnit => "Trough unit",
        OrderItem.CoredUnit => "Cored unit",
        OrderItem.CutUnit => "Unit to saw",
        OrderItem.UnitWaste => "Waste of units",
        OrderItem.FormedLintel => "Formed lintel",
        OrderItem.JointMortar => "Joint mortar",
        OrderItem.LevellingMortar => "Levelling mortar",
        OrderItem.Form => "Forms",
        OrderItem.BeamBar => "Bar of a beam",
        OrderItem.CornerBar => "Corner bar",
        OrderItem.NotchPiece => "Notch piece",
        OrderItem.CoreHole => "Hole to bore",
        _ => item.ToString(),
    };
}
