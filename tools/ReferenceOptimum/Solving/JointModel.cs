using Google.OrTools.Sat;

namespace ReferenceOptimum.Solving;

/// <summary>A joint that may stand in a stretch.</summary>
/// <param name="Stands">Whether it is there.</param>
/// <param name="Centre2">Twice its centre, in the model's unit.</param>
/// <param name="Least2">No joint of its number stands before this.</param>
/// <param name="Most2">No joint of its number stands after this.</param>
internal sealed record JointModel(string Name, BoolVar Stands, LinearExpr Centre2, long Least2, long Most2);
