using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// How often faces surround a point: 1 inside a closed body, 0 outside; fins, doubled faces and small gaps hardly change it.
/// Solid angle of a triangle after Van Oosterom and Strackee, IEEE Trans. Biomed. Eng. 30 (1983), equation 8 (from memory).
/// </summary>
public static class WindingNumber
{
    public static double Of(ImmutableArray<PlanarFace> faces, Vector3 point)
    {
        var angle = 0.0;
        foreach (var face in faces)
        {
            var first = face.Loop[0] - point;
            for (var i = 1; i + 1 < face.Loop.Length; i++)
            {
                angle += SolidAngle(first, face.Loop[i] - point, face.Loop[i + 1] - point);
            }
        }

        return angle / (4 * Math.PI);
    }

    private static double SolidAngle(Vector3 a, Vector3 b, Vector3 c)
    {
        var (la, lb, lc) = (a.Length, b.Length, c.Length);
        var volume = Vector3.Dot(a, Vector3.Cross(b, c));
        var rest = (la * lb * lc) + (Vector3.Dot(a, b) * lc) + (Vector3.Dot(a, c) * lb) + (Vector3.Dot(b, c) * la);
        return 2 * Math.Atan2(volume, rest);
    }
}
