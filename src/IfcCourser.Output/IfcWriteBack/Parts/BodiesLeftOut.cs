using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>
/// What goes from a model whose coursed walls get parts: the bodies of these walls, of parts they have already and of openings in nothing
/// else, with all that only they use. Axes and footprints stay. Instances that must lose a reference are replaced.
/// </summary>
internal sealed class BodiesLeftOut
{
    private readonly IfcModel _model;
    private readonly HashSet<long> _dropped = [];
    private readonly SortedDictionary<long, StepInstance> _replaced = [];

    private BodiesLeftOut(IfcModel model)
    {
        _model = model;
    }

    public IReadOnlySet<long> Dropped => _dropped;

    public static BodiesLeftOut Of(IfcModel model, Layout layout)
    {
        var left = new BodiesLeftOut(model);
        left.Find(left.Elements(layout));
        return left;
    }

    public void Replace(StepAppender appender)
    {
        foreach (var (id, instance) in _replaced)
        {
            appender.Replace(id, instance.Type, [.. instance.Arguments]);
        }
    }

    /// <summary>Coursed walls, their own parts, and the openings that void nothing else.</summary>
    private HashSet<long> Elements(Layout layout)
    {
        var coursed = layout.Walls.Select(wall => wall.Identity.StepId).ToHashSet();
        var records = _model.Walls.Where(record => coursed.Contains(record.StepId)).ToList();
        var elements = records.SelectMany(record => record.OwnParts.Select(part => part.StepId)).Concat(coursed).ToHashSet();
        var hosts = _model.Instances.All("IFCRELVOIDSELEMENT")
            .Select(relation => (Host: relation["RelatingBuildingElement"].AsReference, Opening: relation["RelatedOpeningElement"].AsReference))
            .ToLookup(pair => pair.Opening, pair => pair.Host);
        elements.UnionWith(hosts.Where(group => group.Key is not null && group.All(host => host is { } id && elements.Contains(id)))
            .Select(group => group.Key!.Value)
            .ToList());
        return elements;
    }

    private void Find(HashSet<long> elements)
    {
        var shapes = elements.Select(id => _model.Find(id)?["Representation"].AsReference).OfType<long>().Where(_model.File.Contains).ToHashSet();
        var aspects = _model.Instances.All("IFCSHAPEASPECT")
            .Where(aspect => aspect["PartOfProductDefinitionShape"].AsReference is { } shape && shapes.Contains(shape))
            .ToLookup(aspect => aspect["PartOfProductDefinitionShape"].AsReference!.Value, aspect => aspect.Id);
        var candidates = new HashSet<long>(shapes);
        foreach (var root in shapes.Concat(aspects.SelectMany(group => group)).Order())
        {
            Referrals.Reach(_model.File, root, candidates);
        }

        candidates.RemoveWhere(id => _model.File.TypeOf(id) is "IFCGEOMETRICREPRESENTATIONCONTEXT" or "IFCGEOMETRICREPRESENTATIONSUBCONTEXT");
        var referrers = Referrals.To(_model.File, candidates);
        foreach (var shape in shapes.Order())
        {
            LeaveOut(shape, elements, [.. aspects[shape]], referrers);
        }

        var weak = Loosen(referrers);
        Referrals.DropUnreferred(_dropped, referrers);
        Tidy(weak);
    }

    /// <summary>Leaves one product's body out: its shape keeps axis and footprint, or goes where it has neither.</summary>
    private void LeaveOut(long shape, HashSet<long> elements, HashSet<long> aspects, Dictionary<long, HashSet<long>> referrers)
    {
        var products = referrers[shape].Where(id => !aspects.Contains(id)).ToList();
        var isOwn = products.TrueForAll(elements.Contains);
        var entity = _model.Find(shape)!.Value;
        var kept = entity["Representations"].AsList.Where(item => IsKept(_model.Follow(item))).ToImmutableArray();
        if (isOwn && kept.Length > 0)
        {
            _replaced[shape] = With(entity, 2, StepValue.List(kept));
            _dropped.UnionWith(aspects);
            foreach (var id in entity["Representations"].AsList.Except(kept).Select(item => item.AsReference).OfType<long>())
            {
                referrers.GetValueOrDefault(id)?.Remove(shape);
            }

            return;
        }

        foreach (var product in products.Where(elements.Contains))
        {
            const int Representation = 6;
            _replaced[product] = With(_model.Find(product)!.Value, Representation, StepValue.Omitted);
        }

        if (isOwn)
        {
            _dropped.Add(shape);
            _dropped.UnionWith(aspects);
        }
    }

    /// <summary>Takes out what hangs on a shape without needing it: layers and colours. Tells which these are.</summary>
    private HashSet<long> Loosen(Dictionary<long, HashSet<long>> referrers)
    {
        var weak = new HashSet<long>();
        foreach (var users in referrers.Values)
        {
            var loose = users.Where(id => _model.File.TypeOf(id) is "IFCSTYLEDITEM" or "IFCPRESENTATIONLAYERASSIGNMENT" or "IFCPRESENTATIONLAYERWITHSTYLE").ToList();
            users.ExceptWith(loose);
            weak.UnionWith(loose);
        }

        return weak;
    }

    /// <summary>Drops colours of what is gone, and takes it off its layers.</summary>
    private void Tidy(HashSet<long> weak)
    {
        foreach (var entity in weak.Order().Select(id => _model.Find(id)).OfType<IfcEntity>())
        {
            if (entity.Type is "IFCSTYLEDITEM")
            {
                if (entity[0].AsReference is { } item && _dropped.Contains(item))
                {
                    _dropped.Add(entity.Id);
                }

                continue;
            }

            const int AssignedItems = 2;
            var items = entity[AssignedItems].AsList;
            var kept = items.Where(item => item.AsReference is not { } id || !_dropped.Contains(id)).ToImmutableArray();
            if (kept.Length == 0)
            {
                _dropped.Add(entity.Id);
            }
            else if (kept.Length < items.Length)
            {
                _replaced[entity.Id] = With(entity, AssignedItems, StepValue.List(kept));
            }
        }
    }

    private static bool IsKept(IfcEntity? representation) => representation?["RepresentationIdentifier"].AsString is "Axis" or "FootPrint";

    private static StepInstance With(IfcEntity entity, int place, StepValue value) =>
        new(entity.Id, entity.Type, [.. entity.Arguments.Select((argument, i) => i == place ? value : argument)]);
}
