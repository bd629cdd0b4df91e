namespace IfcCourser.Output.Dxf;

/// <summary>Handles that other parts of the drawing point at.</summary>
internal sealed class DxfTableHandles(DxfHandles handles)
{
    public string BlockRecords { get; } = handles.Next();

    public string TextStyle { get; } = handles.Next();

    /// <summary>The dictionary that holds all others.</summary>
    public string Root { get; } = handles.Next();

    public string Layouts { get; } = handles.Next();

    public string PlotStyles { get; } = handles.Next();

    public string PlotStyle { get; } = handles.Next();
}
