namespace ReferenceOptimum;

/// <summary>What the program does.</summary>
internal enum Verb
{
    /// <summary>Compares generated walls.</summary>
    Generated,

    /// <summary>Compares walls of real models.</summary>
    Models,

    /// <summary>Holds the reference itself to exhaustive search on toy walls.</summary>
    SelfCheck,

    /// <summary>Holds the places of bars in generated walls, or in walls of models, to the solver's.</summary>
    Bars,

    /// <summary>Compares saw lists of generated pieces.</summary>
    Saw,
}
