using System.Text;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Output.IfcWriteBack.Openings;

namespace IfcCourser.Output.Tests.IfcWriteBack;

public sealed class PlacementMoverTests
{
    /// <summary>
    /// Metres. The wall #10 stands at (10, 20, 3), turned by a quarter to the left. Opening #20 with window #30 on its placement; opening #40
    /// shares its point with another's; opening #50 shares its placement with the covering #70; window #60 fills it and stands on the wall.
    /// </summary>
    private const string House =
        """
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION((''),'2;1');
        FILE_NAME('house.ifc','2024-03-01T12:00:00',(''),(''),'p','s','');
        FILE_SCHEMA(('IFC4'));
        ENDSEC;
        DATA;
        #1=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
        #2=IFCUNITASSIGNMENT((#1));
        #3=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',$,'House',$,$,$,$,$,#2);
        #4=IFCCARTESIANPOINT((10.,20.,3.));
        #5=IFCDIRECTION((0.,0.,1.));
        #6=IFCDIRECTION((0.,1.,0.));
        #7=IFCAXIS2PLACEMENT3D(#4,#5,#6);
        #8=IFCLOCALPLACEMENT($,#7);
        #10=IFCWALL('1UcKJVh1wiUc0jPM8BIIf8',$,'A',$,$,#8,$,$,$);
        #11=IFCCARTESIANPOINT((1.,0.,0.5));
        #12=IFCAXIS2PLACEMENT3D(#11,$,$);
        #13=IFCCARTESIANPOINT((0.,0.,0.));
        #14=IFCAXIS2PLACEMENT3D(#13,$,$);
        #19=IFCLOCALPLACEMENT(#8,#12);
        #20=IFCOPENINGELEMENT('0AcKJVh1wiUc0jPM8BIIf8',$,'O1',$,$,#19,$,$,$);
        #29=IFCLOCALPLACEMENT(#19,#14);
        #30=IFCWINDOW('0BcKJVh1wiUc0jPM8BIIf8',$,'W1',$,$,#29,$,$,1.,1.,$,$,$);
        #39=IFCLOCALPLACEMENT(#8,#12);
        #40=IFCOPENINGELEMENT('0CcKJVh1wiUc0jPM8BIIf8',$,'O2',$,$,#39,$,$,$);
        #49=IFCLOCALPLACEMENT(#8,#12);
        #50=IFCOPENINGELEMENT('0DcKJVh1wiUc0jPM8BIIf8',$,'O3',$,$,#49,$,$,$);
        #59=IFCLOCALPLACEMENT(#8,#12);
        #60=IFCWINDOW('0EcKJVh1wiUc0jPM8BIIf8',$,'W3',$,$,#59,$,$,1.,1.,$,$,$);
        #70=IFCCOVERING('0FcKJVh1wiUc0jPM8BIIf8',$,'C',$,$,#49,$,$,$);
        ENDSEC;
        END-ISO-10303-21;
        """;

    [Theory]
    [InlineData(20, 30)]
    [InlineData(40, null)]
    [InlineData(50, 60)]
    public void AnOpeningAndWhatFillsItMoveAndNothingElseDoes(int opening, int? filling)
    {
        var shift = new Vector3(0, 75, -250);
        using var before = Read(House);
        var appended = new Step21Copy(before);
        long[] fillings = filling is { } id ? [id] : [];
        new PlacementMover(before, appended.Appender, fillings.Prepend(opening)).Move(opening, fillings, shift);
        using var after = Read(appended.Text());
        foreach (var product in (long[])[10, 20, 30, 40, 50, 60, 70])
        {
            var expected = PlaceOf(before, product) + (product == opening || fillings.Contains(product) ? shift : default);
            Assert.Equal(0, (PlaceOf(after, product) - expected).Length, 1e-6);
        }
    }

    private static Vector3 PlaceOf(IfcModel model, long product) => model.Placement(model.Find(product)!.Value["ObjectPlacement"].AsReference).Origin;

    private static IfcModel Read(string text) => IfcModel.Read("house.ifc", Encoding.ASCII.GetBytes(text)).Value!;

    private sealed class Step21Copy(IfcModel model)
    {
        public Step21.StepAppender Appender { get; } = new(model.File, Generator.Name, []);

        public string Text()
        {
            using var output = new MemoryStream();
            Appender.Write(output, "2026-01-02T00:00:00", "test");
            return Encoding.ASCII.GetString(output.ToArray());
        }
    }
}
