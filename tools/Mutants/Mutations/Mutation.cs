using Mutants.Step;

namespace Mutants.Mutations;

/// <param name="Name">Of the kind of change, for reports.</param>
/// <param name="Apply">Changes the draft; false where it holds nothing of the kind.</param>
internal sealed record Mutation(string Name, Func<Draft, Random, bool> Apply)
{
    /// <summary>Every kind of change.</summary>
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("delete an instance", InstanceMutations.Delete),
        new("instance twice under one number", InstanceMutations.SameNumber),
        new("copy of an instance under a new number", InstanceMutations.Copy),
        new("another entity's name", InstanceMutations.OtherEntity),
        new("swap two instances' numbers", InstanceMutations.SwapNumbers),
        new("swap two references", ReferenceMutations.Swap),
        new("reference to another instance", ReferenceMutations.Retarget),
        new("reference to another instance of the kind", ReferenceMutations.RetargetAlike),
        new("dangling reference", ReferenceMutations.Dangle),
        new("instance that refers to itself", ReferenceMutations.Self),
        new("two instances that refer to each other", ReferenceMutations.Cycle),
        new("number that is none or no length", NumberMutations.Odd),
        new("number scaled", NumberMutations.Scale),
        new("number nearly the same", NumberMutations.Nudge),
        new("negative number", NumberMutations.Negate),
        new("number of a neighbour", NumberMutations.Borrow),
        new("$ or * in place of a value", ValueMutations.Omit),
        new("value of another kind", ValueMutations.OtherKind),
        new("very long text", ValueMutations.LongText),
        new("hostile text", ValueMutations.HostileText),
        new("enumeration of another", ValueMutations.OtherEnumeration),
        new("empty list", ListMutations.Empty),
        new("deep nesting", ListMutations.Nest),
        new("argument dropped", ListMutations.Drop),
        new("argument added", ListMutations.Add),
        new("arguments swapped", ListMutations.Swap),
        new("list reversed", ListMutations.Reverse),
        new("item many times", ListMutations.Repeat),
        new("cut off", FileMutations.CutOff),
        new("other schema", FileMutations.Schema),
        new("bytes garbled", FileMutations.Garble),
        new("stretch of the file twice", FileMutations.Twice),
    ];
}
