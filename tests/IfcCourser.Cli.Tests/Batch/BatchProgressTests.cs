using IfcCourser.Cli.Batch;

namespace IfcCourser.Cli.Tests.Batch;

public sealed class BatchProgressTests
{
    /// <summary>
    /// Who draws the bar holds the console and asks for the line; who tells of a failure waits for the console. Were either to wait for
    /// the other, the batch would stand still for ever.
    /// </summary>
    [Fact]
    public async Task The_line_of_the_bar_does_not_wait_for_a_failure_that_is_being_told()
    {
        var stop = TestContext.Current.CancellationToken;
        var progress = new BatchProgress(new Terminal(TextWriter.Null, TextWriter.Null, ErrorIsTerminal: true), 2, 200);
        using var console = new SemaphoreSlim(0);
        var isTelling = new TaskCompletionSource();
        progress.Say = _ =>
        {
            isTelling.SetResult();
            console.Wait(stop);
        };

        var worker = Task.Run(() => progress.Done("1", "no walls", 100), stop);
        await isTelling.Task.WaitAsync(TimeSpan.FromMinutes(1), stop);
        var line = await Task.Run(progress.Line, stop).WaitAsync(TimeSpan.FromMinutes(1), stop);
        var share = await Task.Run(() => progress.Share, stop).WaitAsync(TimeSpan.FromMinutes(1), stop);
        console.Release();
        await worker;

        Assert.Contains("1 of 2 lots, 1 failed", line, StringComparison.Ordinal);
        Assert.Equal(0.5, share);
    }
}
