using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

public sealed class IfcEntityTests
{
    /// <summary>IfcLabel is STRING(255) (ISO 16739-1).</summary>
    [Fact]
    public void Labels_are_no_longer_than_the_standard_lets_them_be()
    {
        Assert.Equal(new string('a', 255), IfcEntity.Shortened(new string('a', 255)));
        Assert.Equal(new string('a', 254) + "…", IfcEntity.Shortened(new string('a', 1_000_000)));
    }

    [Fact]
    public void A_label_is_not_cut_within_a_character() =>
        Assert.Equal(new string('a', 253) + "…", IfcEntity.Shortened(new string('a', 253) + string.Concat(Enumerable.Repeat("\U0001F9F1", 20))));
}
