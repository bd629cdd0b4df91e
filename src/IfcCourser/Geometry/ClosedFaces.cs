namespace IfcCourser.Geometry;

/// <summary>Faces of a model as a solid, if they close.</summary>
public static class ClosedFaces
{
    /// <summary>
    /// The solid inside faces; null where they do not close: what they enclose (divergence theorem) must be what the cells
    /// hold, and no cell may reach beyond them. Faces turned inside out are turned back, whole parts of a body are solid
    /// either way.
    /// </summary>
    public static Solid? Enclosed(IEnumerable<PlanarFace> faces)
    {
        const double Share = 0.02;
        const double Reach = 0.5;
        var all = FaceOrientation.Unified([.. faces]);
        if (all.Length < 4)
        {
            return null;
        }

        var origin = all[0].Loop[0];
        var enclosed = all.Sum(face => Vector3.Dot(face.Loop[0] - origin, face.AreaVector)) / 6;
        var cells = CellDecomposition.Surrounded(all);
        var solid = new Solid([.. cells.Select(cell => cell.Cell)]);
        var held = cells.Sum(cell => Math.Round(cell.Winding) * cell.Cell.Volume);
        var beyond = solid.Box.Size - Box3.Around(all.SelectMany(face => face.Loop)).Size;
        var closes = Math.Abs(held - enclosed) <= Share * solid.Volume && Math.Max(beyond.X, Math.Max(beyond.Y, beyond.Z)) <= Reach;
        return closes && !solid.IsEmpty ? solid : null;
    }
}
