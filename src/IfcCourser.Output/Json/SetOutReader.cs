using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Output.Json;

/// <summary>The set-out of layout.json.</summary>
internal static class SetOutReader
{
    public static SetOut Read(JsonPlace setOut)
    {
        var survey = setOut["survey"];
        return new SetOut(
            new SurveyAxes(
                survey["kind"].Choice<SurveyKind>(JsonNames.Of),
                survey["name"].TextOrNull(),
                survey["eastings"].Number(),
                survey["northings"].Number(),
                survey["height"].Number(),
                survey["east"].Direction(),
                survey["scale"].Number()),
            survey.Optional("trueNorth")?.Direction(),
            setOut["storeys"].List(Storey));
    }

    private static StoreySetOut Storey(JsonPlace storey)
    {
        var axes = storey["axes"];
        return new StoreySetOut
        {
            Storey = storey["storey"].TextOrNull(),
            Axes = new SetOutAxes(axes["origin"].Vector2(), axes["along"].Direction(), ControlLine(axes["xFrom"]), ControlLine(axes["yFrom"])),
            Outlines = storey["outlines"].List(Outline),
            Grid = storey["grid"].List(line => new GridLine(line["tag"].Text(), Family(line["family"]), line["from"].Vector2(), line["to"].Vector2())),
            CheckLines = storey["checkLines"].List(line => new CheckLine(
                ControlLine(line), IsUpright(line["measures"]), line["at"].Length(), line["from"].Vector2(), line["to"].Vector2())),
            ControlPoints = storey["controlPoints"].List(ControlPoint),
            Diagonals = storey["diagonals"].List(diagonal => new Diagonal(diagonal["from"].Whole(), diagonal["to"].Whole(), diagonal["length"].Length())),
            Bars = storey["bars"].List(Bar),
            Findings = storey["findings"].List(LayoutReader.Finding),
        };
    }

    private static ControlLine ControlLine(JsonPlace line) => new(line["kind"].Choice<ControlLineKind>(JsonNames.Of), line["tag"].Text());

    private static SetOutOutline Outline(JsonPlace outline) => new(
        outline["kind"].Choice<ControlLineKind>(JsonNames.Of), outline["name"].TextOrNull(), outline["top"].Number(), outline["loop"].List(point => point.Vector2()));

    private static ControlPoint ControlPoint(JsonPlace point)
    {
        var (x, y) = point["at"].Pair();
        return new ControlPoint(
            point["number"].Whole(), point["kind"].Choice<ControlPointKind>(JsonNames.Of), point["tag"].Text(), point["wall"].TextOrNull(), point["point"].Vector3(), x, y);
    }

    private static BarSetOut Bar(JsonPlace bar)
    {
        var (x, y) = bar["at"].Pair();
        return new BarSetOut
        {
            Number = bar["number"].Whole(),
            Wall = bar["wall"].Text(),
            Core = bar["core"].Text(),
            Foot = bar["foot"].Choice<BarFoot>(JsonNames.Of),
            Point = bar["point"].Vector3(),
            X = x,
            Y = y,
            Block = bar.Optional("block") is { } block ? FootBlock(block) : null,
            OnFace = bar.Optional("onFace") is { } face ? OnFace(face) : null,
        };
    }

    private static FootBlock FootBlock(JsonPlace block)
    {
        var (before, after) = block["joints"].Pair();
        return new FootBlock(block["wall"].Text(), block["course"].Whole(), before, after);
    }

    private static SkewPlace OnFace(JsonPlace face)
    {
        var (along, across) = face["at"].Pair();
        return new SkewPlace(face["corner"].Whole(), along, across);
    }

    private static bool IsUpright(JsonPlace measures)
    {
        var text = measures.Text();
        if (text is not ("x" or "y"))
        {
            measures.Note($"is \"{text}\", which is neither x nor y");
        }

        return text == "x";
    }

    private static char Family(JsonPlace place)
    {
        var text = place.Text();
        if (text.Length != 1)
        {
            place.Note($"is \"{text}\", which is not one letter");
        }

        return text.Length == 1 ? text[0] : 'U';
    }
}
