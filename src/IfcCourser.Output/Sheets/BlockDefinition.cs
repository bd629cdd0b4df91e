namespace IfcCourser.Output.Sheets;

/// <summary>A drawing used many times. Equal names mean equal content, in every sheet of a set.</summary>
public sealed record BlockDefinition(string Name, ImmutableArray<SheetItem> Items, ImmutableArray<BlockAttribute> Attributes);
