using System.Globalization;
using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>
/// The owner history of what is added: our own, never the architect's. Mandatory in IFC2X3; later schemas get one only where
/// the model's project has one.
/// </summary>
internal static class OwnerHistory
{
    /// <summary>A reference to the owner history, or <c>$</c>.</summary>
    /// <param name="date">ISO 8601; gives the time of change.</param>
    public static StepValue Add(IfcModel model, StepAppender appender, string date)
    {
        var hasProjectOne = model.Instances.All("IFCPROJECT").Any(project => !project["OwnerHistory"].IsNothing);
        if (model.Schema != IfcSchema.Ifc2X3 && !hasProjectOne)
        {
            return StepValue.Omitted;
        }

        var name = StepValue.String(Generator.Name);
        var none = StepValue.Omitted;
        var person = appender.Add("IFCPERSON", none, name, none, none, none, none, none, none);
        var organization = appender.Add("IFCORGANIZATION", none, name, none, none, none);
        var user = StepValue.Reference(
            appender.Add("IFCPERSONANDORGANIZATION", StepValue.Reference(person), StepValue.Reference(organization), none));
        var application = StepValue.Reference(
            appender.Add("IFCAPPLICATION", StepValue.Reference(organization), StepValue.String(Generator.Version), name, name));
        var time = StepValue.Integer(UnixSeconds(date));
        return StepValue.Reference(appender.Add(
            "IFCOWNERHISTORY", user, application, none, StepValue.Enumeration("ADDED"), time, user, application, time));
    }

    /// <summary>Seconds since 1970 (IfcTimeStamp); 0 where the date can't be read, since there is no clock to ask.</summary>
    private static long UnixSeconds(string date) =>
        DateTimeOffset.TryParse(date, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var time)
            ? Math.Max(0, time.ToUnixTimeSeconds())
            : 0;
}
