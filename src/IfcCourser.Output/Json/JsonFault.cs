using IfcCourser.Findings;

namespace IfcCourser.Output.Json;

/// <summary>The first thing that is wrong with a JSON file.</summary>
internal sealed class JsonFault(string file)
{
    /// <summary>Path as the user gave it.</summary>
    public string File => file;

    public Fault? First { get; private set; }

    public void Note(Fault fault) => First ??= fault;
}
