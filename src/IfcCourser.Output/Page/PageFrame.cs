using System.Security.Cryptography;
using System.Text;

namespace IfcCourser.Output.Page;

/// <summary>What every page has around its parts: styles and scripts in the file itself, a policy that lets nothing else be loaded or run.</summary>
/// <param name="scripts">Names of the assets that make up the script.</param>
internal sealed class PageFrame(Html html, params ImmutableArray<string> scripts)
{
    private readonly string _script = $"\n{string.Concat(scripts.Select(Resource))}";

    /// <summary>From the beginning into the body.</summary>
    public void Head(string title)
    {
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(_script)));
        html.Line($"<!DOCTYPE html>");
        html.Line($"<html lang=\"en\">");
        html.Line($"<head>");
        html.Line($"<meta charset=\"utf-8\">");
        html.Line($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'\">");
        html.Line($"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        html.Line($"<meta name=\"color-scheme\" content=\"light dark\">");
        html.Line($"<title>{title}</title>");
        html.Raw($"<style>\n{Resource("page.css")}{Resource("drawing.css")}{Resource("print.css")}</style>\n</head>\n<body>\n");
    }

    /// <summary>What the page is, of what, in figures.</summary>
    /// <param name="skip">Where the keyboard's first link leads.</param>
    public void Masthead((string Id, string Heading) skip, string kind, string title, string line, IEnumerable<string> sums)
    {
        html.Line($"<a class=\"skip\" href=\"#{skip.Id}\">To the {skip.Heading.ToLowerInvariant()}</a><header class=\"masthead\">");
        html.Raw(Resource("bond.svg"));
        html.Line($"<p class=\"kind\">{kind}</p><h1>{Markup.Name(title)}</h1>");
        html.Line($"<p>{line}</p>");
        html.Line($"<p class=\"sums\">{Markup.Joined(" ", sums.Select(sum => new Markup($"<span>{HtmlText.Escaped(sum)}</span>")))}</p></header>");
    }

    public void Navigation(IEnumerable<(string Id, string Heading)> parts)
    {
        html.Line($"<nav aria-label=\"Parts of this page\"><ul>");
        foreach (var (id, heading) in parts)
        {
            html.Line($"<li><a href=\"#{id}\">{heading}</a></li>");
        }

        html.Line($"</ul></nav>");
    }

    /// <summary>The script, and the end of the file.</summary>
    public void End() => html.Raw($"<script type=\"module\">{_script}</script>\n</body>\n</html>\n");

    /// <summary>Line ends as written here, however the repository was checked out.</summary>
    private static string Resource(string name)
    {
        using var stream = typeof(PageFrame).Assembly.GetManifestResourceStream($"Page/{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
