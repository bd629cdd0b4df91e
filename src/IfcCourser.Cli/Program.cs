using System.Text;
using IfcCourser.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var terminal = new Terminal(Console.Out, Console.Error, ErrorIsTerminal: !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb")
{
    Colour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
};
using var signals = Interruption.Heed(terminal);
return (int)CommandLine.Run(args, terminal);
