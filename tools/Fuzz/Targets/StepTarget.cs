using IfcCourser.Step21;

namespace Fuzz.Targets;

/// <summary>The clear text encoding: index, every instance, every value, and the copy with an instance added.</summary>
internal static class StepTarget
{
    public static void Read(byte[] bytes)
    {
        var opened = StepFile.Read("fuzz.ifc", bytes);
        if (!opened.IsOk)
        {
            return;
        }

        using var file = opened.Value;
        foreach (var id in file.Ids.ToArray())
        {
            if (file.Find(id) is { } instance)
            {
                foreach (var value in instance.Arguments)
                {
                    Touch(value);
                }
            }
        }

        _ = file.Faults.Select(fault => fault.ToString()).Sum(text => text.Length);
        Append(file);
    }

    private static void Touch(StepValue value)
    {
        _ = (value.AsInteger, value.AsReal, value.AsString?.Length, value.AsEnumeration, value.AsBinary, value.AsBoolean, value.AsReference, value.TypeName);
        foreach (var item in value.AsList)
        {
            Touch(item);
        }
    }

    private static void Append(StepFile file)
    {
        var appender = new StepAppender(file, "fuzz", []);
        var id = appender.Add("IFCPERSON", StepValue.String("a'\\b"), StepValue.Omitted);
        using var copy = new MemoryStream();
        appender.Write(copy, "2026-01-01T00:00:00", "fuzz");
        var again = StepFile.Read("copy.ifc", copy.ToArray());
        Law.Holds(again.IsOk, $"a written copy can't be read: {again.Fault}");
        using var written = again.Value!;
        Law.Holds(written.Find(id)?.Arguments is [var name, ..] && name.AsString == "a'\\b", "the instance that was added is not in the copy");
    }
}
