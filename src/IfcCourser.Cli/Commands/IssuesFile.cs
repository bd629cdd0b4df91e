using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Bcf;

namespace IfcCourser.Cli.Commands;

/// <summary>coordination/issues.bcf, of layout and check.</summary>
internal static class IssuesFile
{
    public const string Format = "bcf";

    public static Fault? Add(OutputFolder folder, Layout layout, RunSettings settings, Terminal terminal)
    {
        terminal.Step(Messages.WritingBcf);
        var joined = BcfReplies.Join(layout, settings.Bcf, settings.Replies);
        if (settings.Replies is not null)
        {
            terminal.EndProgress();
            terminal.Note(Messages.Replies(joined));
        }

        if (joined.Dropped > 0)
        {
            terminal.Note(Messages.RepliesDropped(joined.Dropped));
        }

        return folder.Add("coordination/issues.bcf", stream => BcfWriter.Write(joined.File, stream));
    }
}
