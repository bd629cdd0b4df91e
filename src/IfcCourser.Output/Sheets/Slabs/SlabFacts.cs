using IfcCourser.Geometry;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>A survey with what its sheets need.</summary>
internal sealed class SlabFacts
{
    public SlabFacts(SlabSurvey survey)
    {
        Survey = survey;
        Text = new SheetLengths(survey.Layout.Rules.Catalog.Units);
        Axes = new SlabAxes(survey.Layout, survey.Storey, survey.Beds[0].Block);
    }

    public SlabSurvey Survey { get; }

    public SheetLengths Text { get; }

    public SlabAxes Axes { get; }

    public UnitSystem Units => Text.Units;

    /// <summary>A place of the model on the plan, mm.</summary>
    public Point At(Vector2 place) => Axes.At(place);

    /// <summary>A place in the surface's coordinates on the plan.</summary>
    public Point AtSurface(Vector2 place) => At(place + Survey.Surface.Origin);

    public Point[] Loop(FirstCourseBlock block) => Axes.Loop(block);

    /// <summary>The bed where the slab lies at a height of the model, under the lowest first course, mm.</summary>
    public double Below(double height) => Survey.Datum - Survey.Readings.Zero - height;

    /// <summary>The least thickness that is told, mm.</summary>
    public double Least => Units == UnitSystem.Inch ? 25.4 / 16 : 1;

    /// <summary>A thickness as it is laid: to the sixteenth or the millimetre.</summary>
    public string Thickness(double mm) => Units == UnitSystem.Inch ? Text.Piece(Length.FromMm(mm)) : Text.Piece(Length.FromMm(Math.Round(mm)));

    /// <summary>With its unit.</summary>
    public string ThicknessWithUnit(double mm) => Thickness(mm) + (Units == UnitSystem.Inch ? " in" : " mm");

    /// <summary>The wall's sheet, such as W003.</summary>
    public string WallNumber(Layouts.WallLayout wall) => Axes.WallNumber(wall);
}
