namespace IfcCourser.Output.Bcf;

/// <summary>A BCF file.</summary>
/// <param name="ProjectId">Null where it names no project.</param>
/// <param name="Topics">In the file's order.</param>
/// <param name="Extensions">Words that its topics may use (3.0: extensions.xml).</param>
/// <param name="Date">Stamped on the entries of the zip file.</param>
public sealed record BcfFile(
    BcfVersion Version, string? ProjectId, string? ProjectName, ImmutableArray<BcfTopic> Topics, BcfExtensions Extensions, DateTime Date)
{
    /// <summary>Entries outside topics that are kept as they are, such as documents.</summary>
    public ImmutableSortedDictionary<string, byte[]> Others { get; init; } = ImmutableSortedDictionary.Create<string, byte[]>(StringComparer.Ordinal);
}
