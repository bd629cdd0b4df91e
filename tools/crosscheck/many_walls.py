"""An invented model of many walls that do not touch, each with a door off the module: what the page must bear."""
from pathlib import Path

HEAD = """ISO-10303-21;
HEADER;
FILE_DESCRIPTION((''),'2;1');
FILE_NAME('many.ifc','2026-01-01T00:00:00',(''),(''),'','','');
FILE_SCHEMA(('IFC4'));
ENDSEC;
DATA;
#1=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
#2=IFCUNITASSIGNMENT((#1));
#3=IFCCARTESIANPOINT((0.,0.,0.));
#4=IFCAXIS2PLACEMENT3D(#3,$,$);
#5=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#4,$);
#6=IFCPROJECT('0Many000000000000Project',$,'Invented street',$,$,$,$,(#5),#2);
#7=IFCLOCALPLACEMENT($,#4);
#8=IFCDIRECTION((0.,0.,1.));
#9=IFCCARTESIANPOINT((0.,0.));
"""


def write(path: Path, count: int):
    """Rows of ten walls, five rows a storey."""
    lines, number, members = [], 10, {}

    def add(text):
        nonlocal number
        lines.append(f"#{number}={text};")
        number += 1
        return number - 1

    def box(x, y, z, length, thick, height, product):
        point = add(f"IFCCARTESIANPOINT(({x}.,{y}.,{z}.))")
        axes = add(f"IFCAXIS2PLACEMENT3D(#{point},$,$)")
        placement = add(f"IFCLOCALPLACEMENT(#7,#{axes})")
        middle = add(f"IFCCARTESIANPOINT(({length / 2},{thick / 2}))")
        centre = add(f"IFCAXIS2PLACEMENT2D(#{middle},$)")
        profile = add(f"IFCRECTANGLEPROFILEDEF(.AREA.,$,#{centre},{length}.,{thick}.)")
        solid = add(f"IFCEXTRUDEDAREASOLID(#{profile},#4,#8,{height}.)")
        body = add(f"IFCSHAPEREPRESENTATION(#5,'Body','SweptSolid',(#{solid}))")
        return add(product(placement, add(f"IFCPRODUCTDEFINITIONSHAPE($,$,(#{body}))")))

    for i in range(count):
        storey, row, column = i // 50, i // 10 % 5, i % 10
        x, y, z = column * 7000, row * 4000, storey * 3000
        wall = box(x, y, z, 5000 + 13 * (i % 7), 240, 2750, lambda p, s: f"IFCWALL('0Many{i:017}',$,'Wall {i + 1}',$,$,#{p},#{s},$,$)")
        opening = box(x + 1500 + i % 90, y - 50, z, 1010, 340, 2010, lambda p, s: f"IFCOPENINGELEMENT('0Opening{i:014}',$,'Gap {i + 1}',$,$,#{p},#{s},$,.OPENING.)")
        add(f"IFCRELVOIDSELEMENT('0Void{i:017}',$,$,$,#{wall},#{opening})")
        members.setdefault(storey, []).append(wall)
    for storey, walls in members.items():
        own = add(f"IFCBUILDINGSTOREY('0Storey{storey:015}',$,'Storey {storey + 1}',$,$,#7,$,$,.ELEMENT.,{storey * 3000}.)")
        add(f"IFCRELCONTAINEDINSPATIALSTRUCTURE('0Within{storey:015}',$,$,$,({','.join(f'#{wall}' for wall in walls)}),#{own})")
    path.write_text(HEAD + "\n".join(lines) + "\nENDSEC;\nEND-ISO-10303-21;\n", encoding="ascii")
