namespace IfcCourser.Cli.Commands;

/// <summary>What check was asked for beside what every run is; paths as given, null where not asked for.</summary>
/// <param name="Baseline">Findings accepted before.</param>
/// <param name="WriteBaseline">Where this run's findings go, to be accepted.</param>
/// <param name="JUnit">Where test results go.</param>
internal sealed record CheckSettings(string? Baseline, string? WriteBaseline, string? JUnit);
