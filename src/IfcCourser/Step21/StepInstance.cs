using System.Collections.Immutable;

namespace IfcCourser.Step21;

/// <summary>An instance with its values.</summary>
/// <param name="Id">Instance number.</param>
/// <param name="Type">Upper-case entity name; empty for complex instances.</param>
/// <param name="Arguments">In the order of the file; empty for complex instances.</param>
public sealed record StepInstance(long Id, string Type, ImmutableArray<StepValue> Arguments)
{
    /// <summary>Parts of a complex instance; empty for others.</summary>
    public ImmutableArray<StepPart> Parts { get; init; } = [];

    /// <summary>The argument at a place from 0; <c>$</c> where there are fewer.</summary>
    public StepValue this[int place] => (uint)place < (uint)Arguments.Length ? Arguments[place] : StepValue.Omitted;
}
