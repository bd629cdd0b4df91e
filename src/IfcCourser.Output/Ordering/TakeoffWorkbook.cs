using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;

namespace IfcCourser.Output.Ordering;

/// <summary>takeoff.xlsx: the order with a column for the buyer's prices, what storeys and walls take, the saw list, where there are any the bars and what they are cut from; totals are formulas.</summary>
public static class TakeoffWorkbook
{
    /// <param name="layout">With its order.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var text = new OrderText(layout.Rules);
        WorkbookWriter.Write(
            [OrderSheet.Of(layout, text), .. layout.Order!.Deliveries.IsEmpty ? [] : (WorkbookSheet[])[DeliverySheet.Of(layout, text)], StoreySheet.Of(layout, text), WallSheet.Of(layout, text), SawSheet.Of(layout, text), .. Bars(layout, text)],
            WorkbookWords.Title(layout), layout.Model.Date, layout.Rules.Catalog.Units, stream);
    }

    /// <summary>None where the rules ask for no bars.</summary>
    private static WorkbookSheet[] Bars(Layout layout, OrderText text) =>
        layout.BarSchedule.IsEmpty ? [] : [BarSheet.Of(layout, text), BarStockSheet.Of(layout, text)];
}
