using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>Where the block over a bar ends, as it is measured on site.</summary>
/// <param name="Way">What the block lies along.</param>
/// <param name="Back">From the bar's middle to the end towards zero, or towards the start of the face.</param>
/// <param name="On">To the other end.</param>
public readonly record struct BlockEnds(BlockWay Way, Length Back, Length On)
{
    /// <param name="block">Over the bar.</param>
    /// <param name="frame">Of the block's wall.</param>
    /// <param name="axes">Of the storey.</param>
    public static BlockEnds Of(FootBlock block, WallFrame frame, SetOutAxes axes)
    {
        var way = frame.Curve is not null ? BlockWay.Face
            : PlanLine.IsParallel(frame.Direction, axes.Along) ? BlockWay.X
            : PlanLine.IsParallel(frame.Direction, axes.Along.Left) ? BlockWay.Y
            : BlockWay.Face;
        var isBackwards = way != BlockWay.Face && Geometry.Vector2.Dot(frame.Direction, way == BlockWay.X ? axes.Along : axes.Along.Left) < 0;
        return isBackwards ? new BlockEnds(way, block.After, block.Before) : new BlockEnds(way, block.Before, block.After);
    }
}
