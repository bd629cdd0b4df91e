using System.Globalization;
using System.Text;
using System.Xml;
using IfcCourser.Findings;

namespace IfcCourser.Output.Coordination;

/// <summary>
/// What check found in the form pipelines read test results in (JUnit's XML; no standard): a suite for each wall, a case for the wall and for each of
/// its openings, failed where a finding makes the run fail.
/// </summary>
public static class JUnitXml
{
    /// <param name="report">What was found.</param>
    /// <param name="failOn">The least severity that fails; null for none.</param>
    /// <param name="stream">Written in UTF-8.</param>
    public static void Write(CheckReport report, Severity? failOn, Stream stream)
    {
        var suites = Suites(report).Select(suite => suite with { FailOn = failOn }).ToList();
        using var xml = XmlWriter.Create(stream, new XmlWriterSettings { Indent = true, Encoding = new UTF8Encoding(false), NewLineChars = "\n", CloseOutput = false });
        xml.WriteStartElement("testsuites");
        xml.WriteAttributeString("name", Clean(report.Layout.Model.File));
        Counts(xml, suites);
        foreach (var suite in suites)
        {
            xml.WriteStartElement("testsuite");
            xml.WriteAttributeString("name", Clean(suite.Name));
            Counts(xml, [suite]);
            suite.Cases.ForEach(one => WriteCase(xml, suite, one));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static IEnumerable<Suite> Suites(CheckReport report)
    {
        var byWall = report.Findings.ToLookup(listed => listed.Wall?.StepId);
        yield return new Suite(report.Layout.Model.File, [new Case("model", [.. byWall[null]], null)]);
        foreach (var wall in report.Layout.Walls)
        {
            var byOpening = byWall[wall.Identity.StepId].ToLookup(listed => listed.Finding.At?.Opening, StringComparer.Ordinal);
            var openings = wall.Openings.Select(opening => opening.Opening).ToList();
            var own = byOpening.Where(same => !openings.Exists(opening => string.Equals(opening.GlobalId, same.Key, StringComparison.Ordinal))).SelectMany(same => same);
            yield return new Suite(NameOf(wall.Identity.Label, wall.Identity.Storey), [
                new Case($"wall {wall.Identity.GlobalId}", [.. own], null),
                .. openings.Select(opening => new Case($"{opening.Label} {opening.GlobalId}", [.. byOpening[opening.GlobalId]], null)),
            ]);
        }

        foreach (var wall in report.Layout.Skipped)
        {
            yield return new Suite(NameOf(wall.Identity.Label, wall.Identity.Storey), [new Case($"wall {wall.Identity.GlobalId}", [.. byWall[wall.Identity.StepId]], wall.Reason.Message)]);
        }
    }

    private static string NameOf(string wall, string? storey) => storey is null ? wall : $"{storey}: {wall}";

    private static void Counts(XmlWriter xml, List<Suite> suites)
    {
        foreach (var (name, count) in ((string, int)[])
            [
                ("tests", suites.Sum(suite => suite.Cases.Count)), ("failures", suites.Sum(suite => suite.Cases.Count(suite.Fails))),
                ("errors", 0), ("skipped", suites.Sum(suite => suite.Cases.Count(suite.IsSkipped))), ("time", 0),
            ])
        {
            xml.WriteAttributeString(name, count.ToString(CultureInfo.InvariantCulture));
        }
    }

    private static void WriteCase(XmlWriter xml, Suite suite, Case one)
    {
        xml.WriteStartElement("testcase");
        xml.WriteAttributeString("classname", Clean(suite.Name));
        xml.WriteAttributeString("name", Clean(one.Name));
        xml.WriteAttributeString("time", "0");
        if (one.Findings.Where(listed => listed.Fails(suite.FailOn)).ToList() is [var first, ..] failing)
        {
            xml.WriteStartElement("failure");
            xml.WriteAttributeString("type", first.Finding.Code.Id);
            xml.WriteAttributeString("message", Clean(first.Finding.Message));
            xml.WriteString(Lines(failing));
            xml.WriteEndElement();
        }
        else if (suite.IsSkipped(one))
        {
            xml.WriteStartElement("skipped");
            xml.WriteAttributeString("message", Clean(one.NotCoursed!));
            xml.WriteEndElement();
        }

        if (one.Findings.Where(listed => !listed.Fails(suite.FailOn)).ToList() is { Count: > 0 } others)
        {
            xml.WriteElementString("system-out", Lines(others));
        }

        xml.WriteEndElement();
    }

    private static string Lines(List<CheckedFinding> findings) => string.Join('\n', findings.Select(listed =>
        Clean($"{listed.Finding.Severity.ToString().ToLowerInvariant()} {listed.Finding.Code.Id}{(listed.IsAccepted ? " (accepted)" : string.Empty)}: {listed.Finding.Message}{(listed.Finding.Message.EndsWith('.') ? string.Empty : ".")} {listed.Finding.Code.Remedy}")));

    /// <summary>Characters that XML 1.0 forbids are left out.</summary>
    private static string Clean(string text) => XmlText.Of(text);

    private sealed record Suite(string Name, List<Case> Cases)
    {
        public Severity? FailOn { get; init; }

        public bool Fails(Case one) => one.Findings.Any(listed => listed.Fails(FailOn));

        public bool IsSkipped(Case one) => one.NotCoursed is not null && !Fails(one);
    }

    /// <param name="NotCoursed">Why the wall was not laid out; null where it was.</param>
    private sealed record Case(string Name, ImmutableArray<CheckedFinding> Findings, string? NotCoursed);
}
