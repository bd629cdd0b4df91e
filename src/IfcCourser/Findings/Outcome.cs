using System.Diagnostics.CodeAnalysis;

namespace IfcCourser.Findings;

/// <summary>A value, or the fault that kept it from being read.</summary>
public sealed class Outcome<T>
    where T : class
{
    private Outcome(T? value, Fault? fault)
    {
        Value = value;
        Fault = fault;
    }

    public T? Value { get; }

    public Fault? Fault { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Fault))]
    public bool IsOk => Value is not null;

#pragma warning disable CA1000 // Static members on generic types: the implicit conversions are what callers use
    public static implicit operator Outcome<T>(T value) => new(value, null);

    public static implicit operator Outcome<T>(Fault fault) => new(null, fault);
#pragma warning restore CA1000
}
