using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>Owner history, units, contexts, project, site and building.</summary>
internal static class ProjectPart
{
    private const int CreationTime = 1772438400; // 2026-03-02 08:00 UTC, in seconds since 1970

    private const string Notice = "Invented for tests: no real building, place, person or plan.";

    public static (Reference Building, Reference Placement) Write(ModelFile file)
    {
        if (file.House.HasOwnerHistory || !file.IsIfc4)
        {
            file.OwnerHistory = WriteOwnerHistory(file);
        }

        var units = UnitPart.Write(file);
        var context = WriteContexts(file);
        var project = file.AddRoot(
            "IFCPROJECT", "project", "Larkmoor Rise", Notice, null, "Invented subdivision", null, new[] { context }, units);
        return WriteSite(file, project);
    }

    private static Reference WriteOwnerHistory(ModelFile file)
    {
        var step = file.Step;
        var person = step.Add("IFCPERSON", null, "Invented", null, null, null, null, null, null);
        var organization = step.Add("IFCORGANIZATION", null, "Invented office", null, null, null);
        var both = step.Add("IFCPERSONANDORGANIZATION", person, organization, null);
        var application = step.Add("IFCAPPLICATION", organization, "1", "Fixture maker", "fixture-maker");
        return step.Add(
            "IFCOWNERHISTORY", both, application, null, new Keyword("NOCHANGE"), null, null, null, CreationTime);
    }

    private static Reference WriteContexts(ModelFile file)
    {
        var context = file.Step.Add(
            "IFCGEOMETRICREPRESENTATIONCONTEXT", null, "Model", 3, 1e-5, file.Axes(0, 0, 0), null);
        file.BodyContext = WriteSubContext(file, context, "Body", "MODEL_VIEW");
        file.AxisContext = WriteSubContext(file, context, "Axis", "GRAPH_VIEW");
        return context;
    }

    private static Reference WriteSubContext(ModelFile file, Reference context, string name, string view) => file.Step.Add(
        "IFCGEOMETRICREPRESENTATIONSUBCONTEXT", name, "Model", Derived.Value, Derived.Value, Derived.Value, Derived.Value,
        context, null, new Keyword(view), null);

    private static (Reference Building, Reference Placement) WriteSite(ModelFile file, Reference project)
    {
        var house = file.House;
        var element = new Keyword("ELEMENT");
        var address = file.Step.Add(
            "IFCPOSTALADDRESS", null, Notice, null, null, new[] { house.Address }, null, "Larkmoor", null, null, null);
        var sitePlacement = file.Placement(null, file.Axes(0, 0, 0));
        var site = file.AddRoot(
            "IFCSITE", "site", house.Address, Notice, null, sitePlacement, null, null, element, null, null, null, null, address);
        var placement = file.Placement(sitePlacement, file.Axes(0, 0, 0));
        var building = file.AddRoot(
            "IFCBUILDING", "building", house.Title, Notice, null, placement, null, null, element, null, null, null);
        file.AddRoot("IFCRELAGGREGATES", "project has site", null, null, project, new[] { site });
        file.AddRoot("IFCRELAGGREGATES", "site has building", null, null, site, new[] { building });
        return (building, placement);
    }
}
