using System.Net;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Page;

/// <summary>Texts of a model that would be markup, end the script or break the file, were they written as they are.</summary>
public static class HostileNamesTests
{
    public static TheoryData<string> Names { get; } = new(
        "</script><script>alert(1)</script>",
        "<!--<script>",
        "]]><img onerror=alert(1)>",
        "\" onmouseover=\"alert(1)\" x='",
        "& &amp; &#60; &lt;b>",
        "a\u2028b\u2029c",
        "\u202eright to left",
        "nul \0 bell \a half \ud800 pair \ud83e\uddf1",
        "</title></style></textarea>{{x}}${1}`\\");

    [Theory]
    [MemberData(nameof(Names))]
    public static void Are_text_wherever_they_stand(string name)
    {
        var clean = PageReading.Of(Named("plain"));
        var page = PageReading.Of(Named(name));

        // No element and no attribute more than with a plain name.
        Assert.Equal(Count(clean.Html, "<"), Count(page.Html, "<"));
        Assert.Equal(Count(clean.Html, "</script"), Count(page.Html, "</script"));
        Assert.Equal(Count(clean.Html, "\"") - Count(clean.DataText, "\""), Count(page.Html, "\"") - Count(page.DataText, "\""));
        Assert.DoesNotContain("<!--", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain('\u2028', page.DataText);
        Assert.DoesNotContain('\0', page.Html);
        Assert.All(page.DataText, letter => Assert.InRange(letter, ' ', '~'));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public static void Are_kept_but_for_characters_that_no_file_may_hold(string name)
    {
        var page = PageReading.Of(Named(name));
        var whole = string.Concat(name.EnumerateRunes());
        Assert.Equal(whole, page.Data["walls"]![0]!["name"]!.GetValue<string>());
        Assert.Equal(whole, page.Data["walls"]![0]!["openings"]![0]![1]!.GetValue<string>());
        var written = whole.Replace('\0', '\ufffd').Replace('\a', '\ufffd');
        Assert.Contains(written, WebUtility.HtmlDecode(page.Html), StringComparison.Ordinal);
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    /// <summary>Every text of a model by this name.</summary>
    private static Layout Named(string name)
    {
        var front = Samples.Metric.Walls[0];
        var identity = new WallIdentity(name, front.Identity.StepId, name, name, name);
        var wall = front with
        {
            Wall = front.Wall with { Identity = identity },
            Openings = [.. front.Openings.Select(opening => opening with { Opening = opening.Opening with { GlobalId = name, Name = name } })],
            Lintels = [.. front.Lintels.Select(lintel => lintel with { Product = name })],
            Findings = [new Finding(FindingCodes.OpeningMoved, name, new FindingPlace { Opening = name })],
        };
        return Samples.Metric with
        {
            Model = Samples.Metric.Model with { File = name, ProjectName = name, ProjectId = name },
            Walls = [wall],
            Skipped = [new SkippedWall(identity with { StepId = 7 }, new Finding(FindingCodes.NoBody, name), null)],
            Findings = [new Finding(FindingCodes.NoLengthUnit, name)],
        };
    }
}
