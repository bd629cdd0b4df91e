namespace IfcCourser.Step21;

/// <summary>What a parameter of an instance is.</summary>
public enum StepValueKind
{
    /// <summary><c>$</c>.</summary>
    Omitted,

    /// <summary><c>*</c>: derived by the schema.</summary>
    Derived,
    Integer,
    Real,
    String,
    Enumeration,
    Binary,
    Reference,
    List,

    /// <summary>A value with its type's name, such as <c>IFCLABEL('x')</c>.</summary>
    Typed,
}
