using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack.Openings;

/// <summary>
/// Moves products by their placements. Points and axes are often shared with others, so that a moved placement gets new ones; a placement
/// that others stand on too is left as it is, and the moved product gets a new one.
/// </summary>
internal sealed class PlacementMover
{
    private const string LocalPlacement = "IFCLOCALPLACEMENT";
    private const int ObjectPlacement = 5;

    private readonly IfcModel _model;
    private readonly StepAppender _appender;
    private readonly GeometryWriter _geometry;
    private readonly Dictionary<long, HashSet<long>> _users;
    private readonly HashSet<long> _moved = [];

    /// <param name="products">All that may be moved.</param>
    public PlacementMover(IfcModel model, StepAppender appender, IEnumerable<long> products)
    {
        _model = model;
        _appender = appender;
        _geometry = new GeometryWriter(model, appender);
        _users = Referrals.To(model.File, products.Select(product => PlacementOf(model, product)?.Id).OfType<long>().Distinct());
    }

    public static bool CanMove(IfcModel model, long product) =>
        PlacementOf(model, product) is { } placement
        && model.Follow(placement["RelativePlacement"]) is { Type: "IFCAXIS2PLACEMENT3D" } axes
        && model.Point(axes["Location"]) is not null;

    /// <summary>Moves an opening, and what fills it: with it where it stands on its placement, else by a shift of its own.</summary>
    /// <param name="shift">Model axes, mm.</param>
    public void Move(long product, IReadOnlyCollection<long> fillings, Vector3 shift)
    {
        if (!CanMove(_model, product) || !_moved.Add(product))
        {
            return;
        }

        var placement = PlacementOf(_model, product)!.Value;
        var standing = fillings.Where(filling => StandsOn(filling, placement.Id)).ToList();
        var own = standing.Select(filling => PlacementOf(_model, filling)!.Value.Id).Concat(standing).Append(product).ToHashSet();
        var axes = MovedAxes(placement, shift);
        if (_users[placement.Id].IsSubsetOf(own))
        {
            _appender.Replace(placement.Id, LocalPlacement, placement["PlacementRelTo"], axes);
        }
        else
        {
            Rehang(product, standing, placement, _geometry.Add(LocalPlacement, placement["PlacementRelTo"], axes));
        }

        foreach (var filling in fillings.Except(standing))
        {
            Move(filling, [], shift);
        }
    }

    private static IfcEntity? PlacementOf(IfcModel model, long? product) =>
        model.Follow(model.Find(product)?["ObjectPlacement"] ?? StepValue.Omitted) is { Type: LocalPlacement } placement ? placement : null;

    /// <summary>Whether a filling's placement is that one or relative to it.</summary>
    private bool StandsOn(long filling, long placement) =>
        PlacementOf(_model, filling) is { } own && (own.Id == placement || own["PlacementRelTo"].AsReference == placement);

    private StepValue MovedAxes(IfcEntity placement, Vector3 shift)
    {
        var axes = _model.Follow(placement["RelativePlacement"])!.Value;
        var local = _model.Placement(placement["PlacementRelTo"].AsReference).RigidInverse().Direction(shift);
        var point = _geometry.Point(_model.Point(axes["Location"])!.Value + local);
        return _geometry.Add("IFCAXIS2PLACEMENT3D", point, axes["Axis"], axes["RefDirection"]);
    }

    /// <summary>Gives the product a new placement, and puts on it what stood on the old one.</summary>
    private void Rehang(long product, List<long> standing, IfcEntity old, StepValue placement)
    {
        foreach (var id in standing.Append(product))
        {
            var own = PlacementOf(_model, id)!.Value;
            if (own.Id == old.Id)
            {
                var entity = _model.Find(id)!.Value;
                _appender.Replace(id, entity.Type, [.. entity.Arguments.Select((argument, i) => i == ObjectPlacement ? placement : argument)]);
            }
            else if (own["PlacementRelTo"].AsReference == old.Id)
            {
                _appender.Replace(own.Id, LocalPlacement, placement, own["RelativePlacement"]);
            }
        }
    }
}
