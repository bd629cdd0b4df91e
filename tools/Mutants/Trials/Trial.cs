using IfcCourser.Cli;
using IfcCourser.Ifc;
using IfcCourser.Output.Json;

namespace Mutants.Trials;

/// <summary>One run of layout over a mutant, held to what must be true of every input.</summary>
internal sealed class Trial(Mutant mutant, string folder)
{
    private readonly string _model = Path.Combine(folder, "mutant.ifc");
    private readonly string _out = Path.Combine(folder, "out");

    /// <summary>The law that does not hold; null where all do.</summary>
    public string? Broken()
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }

        Directory.CreateDirectory(folder);
        File.WriteAllBytes(_model, mutant.Bytes);
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var thrown = new Thrown();
        var status = CommandLine.Run(["layout", _model, "--out", _out, .. mutant.Arguments], new Terminal(output, error, ErrorIsTerminal: false));
        return status switch
        {
            ExitStatus.Done or ExitStatus.Findings => Accepted(),
            ExitStatus.Unreadable => Refused(output.ToString(), error.ToString()),
            ExitStatus.Defect => $"exception: {thrown.Last}",
            _ => $"exit status {(int)status}: {error.ToString().Trim()}",
        };
    }

    /// <summary>One line says what is wrong, and nothing is left.</summary>
    private string? Refused(string output, string error)
    {
        var lines = error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return lines.Length != 1 || !error.Contains(_model, StringComparison.Ordinal) ? $"no single clear message: {error}"
            : output.Length > 0 ? "an unreadable model writes to standard output"
            : Directory.Exists(_out) ? "an unreadable model leaves files behind"
            : null;
    }

    private string? Accepted()
    {
        var path = Path.Combine(_out, "layout.json");
        var written = File.ReadAllBytes(path);
        var layout = LayoutReader.Read(written, path);
        if (!layout.IsOk)
        {
            return $"layout.json can't be read back: {layout.Fault}";
        }

        using var again = new MemoryStream();
        LayoutJson.Write(layout.Value, again);
        if (!again.ToArray().AsSpan().SequenceEqual(written))
        {
            return $"layout.json differs once read and written: {FirstDifference(written, again.ToArray())}";
        }

        using var model = IfcModel.Read(_model, mutant.Bytes).Value!;
        var listed = model.Walls.Select(wall => wall.StepId).Order().ToList();
        var answered = layout.Value.Walls.Select(wall => wall.Wall.Identity.StepId).Concat(layout.Value.Skipped.Select(wall => wall.Identity.StepId)).Order().ToList();
        return !listed.SequenceEqual(answered) ? $"walls #{string.Join(" #", listed.Except(answered))} are lost, #{string.Join(" #", answered.Except(listed))} made up"
            : layout.Value.Skipped.Any(wall => string.IsNullOrWhiteSpace(wall.Reason.Code.Id) || string.IsNullOrWhiteSpace(wall.Reason.Message)) ? "a wall is skipped without a reason"
            : layout.Value.Walls.Any(wall => wall.Courses.Length == 0) ? "a wall is coursed without a course"
            : Models();
    }

    /// <summary>Models written are models that can be read, with every wall in them.</summary>
    private string? Models()
    {
        foreach (var file in Directory.EnumerateFiles(_out, "*.ifc", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var written = IfcModel.Open(file);
            if (!written.IsOk)
            {
                return $"a written model can't be read: {written.Fault}";
            }

            written.Value.Dispose();
        }

        return null;
    }

    private static string FirstDifference(byte[] one, byte[] other)
    {
        const int Around = 80;
        var at = one.AsSpan().CommonPrefixLength(other);
        return $"{Part(one)} / {Part(other)}";

        string Part(byte[] bytes) => System.Text.Encoding.UTF8.GetString(bytes, Math.Max(0, at - Around), Math.Min(bytes.Length, at + Around) - Math.Max(0, at - Around));
    }
}
