using System.Globalization;
using Mutants;
using Mutants.Trials;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var isWorker = args is ["work", ..];
if (Options.Read(isWorker ? args[1..] : args) is not { } options)
{
    Console.Error.WriteLine(Options.Usage);
    return 2;
}

const int Kilo = 1024;
string[] models =
[
    .. options.Folders.SelectMany(folder => Directory.EnumerateFiles(folder, "*.ifc", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        .Where(file => new FileInfo(file).Length <= options.Largest * Kilo),
];
if (models.Length == 0)
{
    Console.Error.WriteLine("no .ifc file of that size is in the folders");
    return 2;
}

return isWorker ? Worker.Run(options, models) : new Campaign(options, models).Holds() ? 0 : 1;
