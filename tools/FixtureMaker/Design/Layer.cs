namespace FixtureMaker.Design;

/// <summary>One material layer of a wall; the thickness is in the model's length unit.</summary>
internal sealed record Layer(string Material, double Thickness);
