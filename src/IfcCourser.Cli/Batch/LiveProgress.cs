using Spectre.Console;
using Spectre.Console.Rendering;

namespace IfcCourser.Cli.Batch;

/// <summary>A bar with rates and time left, drawn in place while a batch runs, for someone who watches a terminal.</summary>
internal static class LiveProgress
{
    private const int BarWidth = 24;

    /// <summary>Draws until the work is done, then wipes itself out; failures stay above it.</summary>
    /// <param name="terminal">Whose standard error is drawn on.</param>
    /// <param name="progress">What is drawn.</param>
    /// <param name="work">What takes time.</param>
    public static void Around(Terminal terminal, BatchProgress progress, Action work)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes,
            ColorSystem = terminal.Colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.Yes,
            Out = new AnsiConsoleOutput(terminal.Error),
        });
        progress.Say = console.WriteLine;
        console.Progress().AutoClear(enabled: true)
            .Columns(new BarColumn(progress), new PercentageColumn(), new LineColumn(progress))
            .Start(context =>
            {
                context.AddTask(Messages.BatchTask);
                work();
                context.Refresh();
            });
    }

    /// <summary>The bar, moved on at each look.</summary>
    private sealed class BarColumn(BatchProgress progress) : ProgressColumn
    {
        private readonly ProgressBarColumn _bar = new() { Width = BarWidth };

        public override IRenderable Render(RenderOptions options, ProgressTask task, TimeSpan deltaTime)
        {
            task.Value = progress.Share * task.MaxValue;
            return _bar.Render(options, task, deltaTime);
        }

        public override int? GetColumnWidth(RenderOptions options) => BarWidth;
    }

    /// <summary>Lots, rates and time left; the time runs on between lots.</summary>
    private sealed class LineColumn(BatchProgress progress) : ProgressColumn
    {
        /// <summary>Columns of the bar's percentage and of what stands between the columns.</summary>
        private const int Others = 8;

        protected override bool NoWrap => true;

        public override int? GetColumnWidth(RenderOptions options) => Math.Max(1, options.ConsoleSize.Width - BarWidth - Others);

        public override IRenderable Render(RenderOptions options, ProgressTask task, TimeSpan deltaTime) => new Text(progress.Line());
    }
}
