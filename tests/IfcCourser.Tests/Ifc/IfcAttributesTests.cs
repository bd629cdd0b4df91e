using System.Security.Cryptography;
using System.Text;
using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

public sealed class IfcAttributesTests
{
    /// <summary>
    /// Entities, attributes and SHA-256 of the lines "ENTITY:attribute,attribute" (sorted by entity, each ended by a line feed) as
    /// computed from the EXPRESS definitions themselves: IFC2X3 TC1 (2007-07-10), IFC4 ADD2 TC1, IFC4X3_ADD2 (ISO 16739-1:2024),
    /// with the three renamed attributes that the table names.
    /// </summary>
    [Theory]
    [InlineData(IfcSchema.Ifc2X3, 124, 560, "082c75fee8ac914a59026ba8a46f3b5a0ffc7897c7706376955833dcfdcfe21a")]
    [InlineData(IfcSchema.Ifc4, 146, 699, "8e1d8c7d71e9e9a1ac9a0491a3ba97146906e60be05223f9451b8970c7c8ca8e")]
    [InlineData(IfcSchema.Ifc4X3, 143, 661, "059dcd76d8c882d8f91c66736b153ae97e6d5f6be7ee365165bae21ea6303cb1")]
    public void TheTableHoldsTheAttributesOfTheExpressDefinitions(IfcSchema schema, int entities, int attributes, string sha256)
    {
        // Gone from IFC4X3, kept in the table for files that still hold them.
        string[] withdrawn = schema == IfcSchema.Ifc4X3
            ? ["IFCWALLELEMENTEDCASE", "IFCOPENINGSTANDARDCASE", "IFCDOORSTANDARDCASE", "IFCWINDOWSTANDARDCASE"]
            : [];
        var names = IfcAttributes.Entities(schema).Except(withdrawn, StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var lines = names.Select(name => $"{name}:{string.Join(',', IfcAttributes.Of(schema, name))}\n");
        Assert.Equal(entities, names.Count);
        Assert.Equal(attributes, names.Sum(name => IfcAttributes.Of(schema, name).Length));
        Assert.Equal(sha256, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(lines)))));
    }

    [Fact]
    public void AnEntityOutsideTheTableHasNoNamedAttributes()
    {
        Assert.Empty(IfcAttributes.Of(IfcSchema.Ifc4, "IFCPUMP"));
        Assert.Empty(IfcAttributes.Of(IfcSchema.Ifc2X3, "IFCMATERIALCONSTITUENT"));
    }
}
