using System.Reflection;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.SetOut;

namespace IfcCourser.Output.Tests.Sheets;

public static class LegendTests
{
    /// <summary>A meaning that does not fit beside its sample is cut off, and then says nothing.</summary>
    [Fact]
    public static void Every_meaning_of_a_mark_fits_into_its_row()
    {
        Type[] words = [typeof(SheetText), typeof(PlanText), typeof(SetOutText)];
        var meanings = words.SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static))
            .Where(field => field.IsLiteral && field.Name.StartsWith("Legend", StringComparison.Ordinal)).Select(field => (string)field.GetRawConstantValue()!).ToArray();
        Assert.True(meanings.Length > 20);
        Assert.All(meanings, meaning => Assert.Equal(meaning, TextMetrics.Fit(meaning, Table.TextHeight, Panel.Width - MarkSamples.Width - 4)));
    }
}
