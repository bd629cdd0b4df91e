using IfcCourser.Coursing;
using IfcCourser.Modules;

namespace IfcCourser.Runs;

/// <summary>What is worked out once for all walls of a run. For use by several threads at once.</summary>
internal sealed class RunTables
{
    public RestTables Rests { get; } = new();

    public PierTables Piers { get; } = new();
}
