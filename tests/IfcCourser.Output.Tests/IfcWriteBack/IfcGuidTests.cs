using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Step21;

namespace IfcCourser.Output.Tests.IfcWriteBack;

public sealed class IfcGuidTests
{
    private const string Digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    // By hand from ISO 16739-1, IfcGloballyUniqueId: all bits set is 3 and 21 times the last digit; the lowest bit is the last digit.
    [Theory]
    [InlineData("00000000000000000000000000000000", "0000000000000000000000")]
    [InlineData("ffffffffffffffffffffffffffffffff", "3$$$$$$$$$$$$$$$$$$$$$")]
    [InlineData("00000000000000000000000000000041", "0000000000000000000011")]
    [InlineData("80000000000000000000000000000000", "2000000000000000000000")]
    public void SixBitsMakeADigitFromTheEnd(string hex, string expected) =>
        Assert.Equal(expected, IfcGuid.Compress(Convert.FromHexString(hex)));

    [Fact]
    public void GlobalIdsAreUuidsOfVersionEightThatDependOnIdentityOnly()
    {
        var guid = IfcGuid.Of("host", "role", 0);
        var value = guid.Aggregate(UInt128.Zero, (sum, c) => (sum << 6) | (UInt128)Digits.IndexOf(c, StringComparison.Ordinal));
        Assert.Equal(8, (int)((value >> 76) & 0xF));
        Assert.Equal(2, (int)((value >> 62) & 0x3));
        Assert.Equal(guid, IfcGuid.Of("host", "role", 0));
        string[] others = [guid, IfcGuid.Of("host", "role", 1), IfcGuid.Of("host", "other", 0), IfcGuid.Of("hos", "trole", 0)];
        Assert.Equal(4, others.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("#1=IFCWALL( '")]
    [InlineData("#1=IFCWALL                                                                                                                  (   '")]
    [InlineData("#1  =  IFCWALL                                                                                           (   '")]
    [InlineData("#2=IFCPOINT();#1=IFCWALL('")]
    public void AGlobalIdThatTheFileHoldsIsNotGivenAgain(string before)
    {
        var taken = IfcGuid.Of("host", "role", 0);
        using var file = StepFile.Read(
            "test.ifc", System.Text.Encoding.ASCII.GetBytes($"ISO-10303-21;HEADER;ENDSEC;DATA;{before}{taken}',$);ENDSEC;END-ISO-10303-21;")).Value!;
        var guids = new IfcGuid(file, new HashSet<long>());
        Assert.Equal(IfcGuid.Of("host", "role", 1), guids.For("host", "role"));
        Assert.Equal(IfcGuid.Of("host", "role", 2), guids.For("host", "role"));
        Assert.Equal(taken, new IfcGuid(file, new HashSet<long> { 1 }).For("host", "role"));
    }
}
