using System.Text.Json;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>What the office says of the job, in our JSON.</summary>
internal static class JobJson
{
    public static void Write(Utf8JsonWriter json, JobFacts job) => json.Line("job", line =>
    {
        line.WriteString("project", job.Project);
        line.WriteString("client", job.Client);
        line.WriteString("author", job.Author);
        line.WriteString("checkedBy", job.CheckedBy);
        line.WriteStartArray("revisions");
        foreach (var revision in job.Revisions)
        {
            line.WriteStartObject();
            line.WriteString("mark", revision.Mark);
            line.WriteString("date", revision.Date);
            line.WriteString("what", revision.What);
            line.WriteString("by", revision.By);
            line.WriteEndObject();
        }

        line.WriteEndArray();
    });

    public static JobFacts Read(JsonPlace job) => new()
    {
        Project = job["project"].TextOrNull(),
        Client = job["client"].TextOrNull(),
        Author = job["author"].TextOrNull(),
        CheckedBy = job["checkedBy"].TextOrNull(),
        Revisions = job["revisions"].List(revision => new Revision(revision["mark"].Text(), revision["date"].Text(), revision["what"].Text(), revision["by"].Text())),
    };
}
