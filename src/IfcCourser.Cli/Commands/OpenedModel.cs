using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack.Parts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>A model that could be read, with the sets chosen for it.</summary>
internal sealed record OpenedModel(IfcModel Model, ChosenSets Sets, RunSettings Settings) : IDisposable
{
    public static Outcome<OpenedModel> Open(RunSettings settings)
    {
        var opened = IfcModel.Open(settings.Model);
        if (!opened.IsOk)
        {
            return opened.Fault;
        }

        if (IfcParts.Made(opened.Value))
        {
            opened.Value.Dispose();
            return Messages.PartsAsModel(settings.Model);
        }

        return new OpenedModel(opened.Value, ChosenSets.For(settings, opened.Value.Units.LengthMm), settings);
    }

    public Layout LayOut() => LayOut(Walls());

    /// <summary>The layout, with what it costs to keep openings that move.</summary>
    public Layout LayOutWithCosts()
    {
        var walls = Walls();
        return KeepCosts.With(LayOut(walls), walls);
    }

    private WallModel Walls()
    {
        var walls = WallReader.Read(Model, Settings.Selection, Sets.Catalog, Sets.Rules);
        return UniqueIds.Of(walls with
        {
            Walls = [.. walls.Walls.Select(WithGiven)],
            Findings = [.. Model.Findings, .. IdentityNotes.Of(Model), .. walls.Findings],
        });
    }

    private Layout LayOut(WallModel walls)
    {
        var rules = LayoutRules.For(Sets.Rules, Sets.Catalog, Settings.Openings, Settings.MaxShift);
        var facts = new ModelFacts(
            Model.FileName, Model.Sha256, Model.SchemaName, Model.Units.LengthMm, Model.ProjectId, Model.ProjectName,
            Settings.Date ?? Model.TimeStamp);
        return LayoutBuilder.Build(walls, rules, facts) with { Job = Settings.Job };
    }

    private Wall WithGiven(Wall wall) => wall with
    {
        MovementJoints = [.. Settings.MovementJoints.Where(joint => joint.IsOf(wall.Identity)).Select(joint => joint.At)],
        Embeds = [.. Settings.JobWalls.Where(given => given.IsOf(wall.Identity)).SelectMany(given => given.Embeds)],
    };

    public void Dispose() => Model.Dispose();
}
