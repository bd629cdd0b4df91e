namespace IfcCourser.Output.Dxf;

/// <summary>Texts freed of what DXF readers take for control codes.</summary>
internal static class DxfText
{
    /// <summary>For TEXT and attributes: no line breaks, no %% and ^ codes, no backslash escapes.</summary>
    public static string Plain(string text)
    {
        var kept = string.Concat(text.Where(c => !char.IsControl(c) && c != '^')).Replace('\\', '/');
        while (kept.Contains("%%", StringComparison.Ordinal))
        {
            kept = kept.Replace("%%", "%", StringComparison.Ordinal);
        }

        return kept;
    }

    /// <summary>For texts of dimensions, which are read as MTEXT: no braces either, nor the sign for the measured value.</summary>
    public static string Multiline(string text) =>
        string.Concat(Plain(text).Where(c => c is not ('{' or '}' or '<' or '>')));

    /// <summary>For names of layouts and blocks: none of the characters that names must not have.</summary>
    public static string Name(string text) =>
        string.Concat(Plain(text).Select(c => "<>/\\\":;?*|,=`".Contains(c, StringComparison.Ordinal) ? '_' : c));
}
