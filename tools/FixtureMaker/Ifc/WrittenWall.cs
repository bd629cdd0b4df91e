using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>A wall in the file, with what others may refer to.</summary>
/// <param name="Shape">Its product definition shape; null where it has no representation.</param>
internal sealed record WrittenWall(Reference Wall, Reference Placement, Reference? Shape);
