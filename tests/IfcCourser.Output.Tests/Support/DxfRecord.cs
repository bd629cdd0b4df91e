using System.Globalization;

namespace IfcCourser.Output.Tests.Support;

/// <summary>What stands between two codes 0 of a drawing.</summary>
internal sealed record DxfRecord(string Type, List<(int Code, string Value)> Groups)
{
    /// <summary>Its handle, where it has one.</summary>
    public string? Handle => Type == "DIMSTYLE" ? First(105) : First(5);

    public string? First(int code) => Groups.Where(group => group.Code == code).Select(group => group.Value).FirstOrDefault();

    public double Number(int code) => double.Parse(First(code)!, CultureInfo.InvariantCulture);
}
