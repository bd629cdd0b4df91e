using IfcCourser.Catalogs;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Reinforcement;

/// <summary>Worked by hand in a trough with sides of 2 in and a bottom of 3 in, 1/2 in of grout around No. 4 bars.</summary>
public sealed class BeamSectionTests
{
    private static readonly TroughUnit _trough = new("trough", [], Inches(2), Inches(3));

    /// <summary>The wall's middle lies 4 in in; two bars of 1/2 in touch where their middles are 1/2 in apart: 3 1/2 in. 3 + 1/2 + 1/4 in over the underside.</summary>
    [Fact]
    public void One_bar_lies_beside_the_upright_bars()
    {
        var section = BeamSection.Of(Inches(8), _trough, Inches(0.5), Bars(1));
        Assert.Equal([Inches(3.5)], section.Across);
        Assert.Equal(Inches(3.75), section.Height);
        Assert.False(section.IsCrowded);
    }

    [Fact]
    public void One_bar_lies_in_the_middle_where_none_stands_upright() => Assert.Equal([Inches(4)], BeamSection.Of(Inches(8), _trough, Length.Zero, Bars(1)).Across);

    /// <summary>2 + 1/2 + 1/4 in from each face; 2 1/2 in apart, of which 2 in are clear.</summary>
    [Fact]
    public void Two_bars_lie_at_the_sides()
    {
        var section = BeamSection.Of(Inches(8), _trough, Inches(0.5), Bars(2));
        Assert.Equal([Inches(2.75), Inches(5.25)], section.Across);
        Assert.False(section.IsCrowded);
    }

    /// <summary>2 1/2 in between the outer ones leave 3/4 in clear beside one in their middle, and an inch is asked for.</summary>
    [Fact]
    public void Three_bars_are_too_many_in_it() => Assert.True(BeamSection.Of(Inches(8), _trough, Length.Zero, Bars(3)).IsCrowded);

    /// <summary>1 1/2 + 1/4 in from the faces of a beam that is formed.</summary>
    [Fact]
    public void Formed_beams_have_the_cover_of_concrete()
    {
        var section = BeamSection.Of(Inches(8), null, Inches(0.5), Bars(2));
        Assert.Equal([Inches(1.75), Inches(6.25)], section.Across);
        Assert.Equal(Inches(1.75), section.Height);
    }

    private static BeamBars Bars(int count) => new(count, BarSizes.Find("No. 4")!, "steel", Inches(24), Inches(240), new BeamCover(Inches(2), Inches(0.5), Inches(1.5)));

    private static Length Inches(double inches) => Length.FromInches(inches);
}
