using FixtureMaker.Step;

namespace FixtureMaker.Tests.Step;

public class GlobalIdsTests
{
    // buildSMART's compressed form: digits 0-9 A-Z a-z _ $, two bits in the first character and six in each other.
    [Fact]
    public void No_bits_are_all_zeros() => Assert.Equal(new string('0', 22), GlobalIds.FromBits(new byte[16]));

    [Fact]
    public void All_bits_are_a_three_and_dollars() =>
        Assert.Equal("3" + new string('$', 21), GlobalIds.FromBits(Enumerable.Repeat((byte)255, 16).ToArray()));

    [Fact]
    public void The_last_character_holds_the_lowest_six_bits()
    {
        var bits = new byte[16];
        bits[15] = 0b0110_0100; // 1 and 36: the characters 1 and a
        Assert.Equal(new string('0', 20) + "1a", GlobalIds.FromBits(bits));
    }
}
