using System.Collections.Immutable;

namespace IfcCourser.Findings;

/// <summary>Every finding the tool can report, in one table; the page of all codes is made from it.</summary>
public static class FindingCodes
{
    // Before the codes, which enter themselves in the order of this file.
    private static readonly List<FindingCode> _listed = [];

    // The model's file
    public static readonly FindingCode InstanceSkipped = Listed(
        "instance-skipped", Severity.Warning, "An instance of the file is malformed or defined twice and was not read.",
        "Export the model again, or correct the line named.");

    public static readonly FindingCode ReferenceMissing = Listed(
        "reference-missing", Severity.Warning, "An instance refers to one that is not in the file.", "Export the model again.");

    public static readonly FindingCode NoLengthUnit = Listed(
        "no-length-unit", Severity.Warning, "The project names no length unit.", "Name the unit in the authoring program and export again.");

    public static readonly FindingCode PlacementCycle = Listed(
        "placement-cycle", Severity.Error, "A placement is relative to itself.", "Correct the placements and export again.");

    public static readonly FindingCode PlacementNotRead = Listed(
        "placement-not-read", Severity.Warning, "A placement is of a kind that is not read; its origin is taken.",
        "Place the element with local placements.");

    public static readonly FindingCode SignatureDropped = Listed(
        "signature-dropped", Severity.Note, "The file is signed; its signature does not hold for a changed copy and is left out.",
        "Sign the written model again where that is asked for.");

    // Walls that are not laid out
    public static readonly FindingCode NoBody = Listed(
        "no-body", Severity.Warning, "The wall has no 3D body.", "Export the wall with its body representation.");

    public static readonly FindingCode NoMasonryLayer = Listed(
        "no-masonry-layer", Severity.Note, "No layer, material or type name of the wall matches the catalog's word list.",
        "Name the material of the block layer, or run with --walls all.");

    public static readonly FindingCode LayerNotLocated = Listed(
        "layer-not-located", Severity.Warning, "A layer's name says masonry, but the model does not tell where in the body the layer lies.",
        "Export the layers with their thickness, or each as an item or part of its own; or run with --walls all.");

    public static readonly FindingCode WidthNotInCatalog = Listed(
        "width-not-in-catalog", Severity.Warning, "No unit of the catalog has the width of the wall's masonry layer.",
        "Change the layer's thickness to a catalog width, choose another catalog, or run with --width nearest or any.");

    public static readonly FindingCode NotSelected = Listed(
        "not-selected", Severity.Note, "The wall was left out by --only, --exclude or --storey.", "Nothing, if that was meant.");

    public static readonly FindingCode LowerThanOneCourse = Listed(
        "lower-than-one-course", Severity.Warning, "The wall is lower than the levelling bed and its least course.",
        "Check the wall's height; build it by other means.");

    public static readonly FindingCode ShorterThanLeastPiece = Listed(
        "shorter-than-least-piece", Severity.Warning, "The wall is shorter than the least piece.",
        "Join it with its neighbour or lengthen it.");

    public static readonly FindingCode NotLongerThanThick = Listed(
        "not-longer-than-thick", Severity.Warning, "The body is not longer than it is thick.",
        "Check whether this is a wall or a column.");

    public static readonly FindingCode DuplicateGlobalId = Listed(
        "duplicate-global-id", Severity.Warning, "Two walls of the model have the same GlobalId.",
        "Export again with new GlobalIds; until then the later wall is named by its GlobalId and instance number.");

    public static readonly FindingCode GlobalIdMalformed = Listed(
        "global-id-malformed", Severity.Note, "Walls have GlobalIds that are no GlobalIds; other programs may not find them by it.",
        "Export the model again with proper GlobalIds.");

    public static readonly FindingCode NoStorey = Listed(
        "no-storey", Severity.Note, "Walls belong to no storey; they are laid out, but --storey does not find them.",
        "Place the walls on storeys, or delete those that are not used.");

    public static readonly FindingCode BodyNotRead = Listed(
        "body-not-read", Severity.Warning, "The wall's body has a part whose shape can't be read, or whose faces do not close.",
        "Export the wall as an extrusion, a closed brep or a closed tessellation.");

    public static readonly FindingCode SizeImplausible = Listed(
        "size-implausible", Severity.Warning, "The body is of a size that no wall has; the model's length unit is wrong by its looks.",
        "Check the length unit of the export: millimetres marked as metres, or the other way round.");

    public static readonly FindingCode MadeOfWalls = Listed(
        "made-of-walls", Severity.Note, "The wall is only the sum of other walls of the model, which are laid out themselves.",
        "Nothing.");

    public static readonly FindingCode CoincidentWall = Listed(
        "coincident-wall", Severity.Warning, "The wall stands in the place of another wall; that one is laid out.",
        "Delete one of the two walls.");

    public static readonly FindingCode CurvedInPlan = Listed(
        "curved-in-plan", Severity.Warning, "The wall is curved in plan, more tightly or in more than one arc than straight units and their head joints follow.",
        "Split the wall into straight ones, have units cut to the curve, or choose a catalog with shorter units or wider joints.");

    public static readonly FindingCode TurnsInPlan = Listed(
        "turns-in-plan", Severity.Warning, "The body turns corners or branches in plan, so that most of it stands out of any two parallel faces.",
        "Model each straight stretch as a wall of its own.");

    public static readonly FindingCode NoParallelFaces = Listed(
        "no-parallel-faces", Severity.Warning, "The body has no two parallel upright faces: it is round, bent or tapered in plan.",
        "Model the wall with two parallel faces, or build it by other means.");

    public static readonly FindingCode FacesBent = Listed(
        "faces-bent", Severity.Warning, "Faces of the body bend both ways, as on a sphere or a free-form surface; no layer of blocks follows them.",
        "Model the wall with plane faces.");

    public static readonly FindingCode FacesNotUpright = Listed(
        "faces-not-upright", Severity.Warning, "The faces of the body lean or step so that no layer of one thickness runs through most of it.",
        "Model the wall with upright faces, or split it.");

    public static readonly FindingCode OpeningTakesWall = Listed(
        "opening-takes-wall", Severity.Warning, "Openings leave nothing of the wall.", "Check the opening, or delete the wall.");

    // How walls stand and meet
    public static readonly FindingCode CurveUnrolled = Listed(
        "curve-unrolled", Severity.Note, "The wall is curved in plan and laid out along its centre line; it is not joined with its neighbours.",
        "Check its ends, and keep to the joints given for its centre line.");

    public static readonly FindingCode BodyInPieces = Listed(
        "body-in-pieces", Severity.Note, "The masonry falls into pieces side by side; the gap between them is taken as an opening over its height.",
        "Model each piece as a wall of its own, or the gap as an opening.");

    public static readonly FindingCode PieceLeftOut = Listed(
        "piece-left-out", Severity.Warning, "A piece of the masonry stands above, below or apart from the rest and is not laid out.",
        "Model each piece as a wall of its own.");

    public static readonly FindingCode PocketFilled = Listed(
        "pocket-filled", Severity.Note, "A part of the thickness is missing between masonry, as where other walls enter or in a niche; it is laid through.",
        "Nothing where a wall enters; model a niche as a recess.");

    public static readonly FindingCode BodyBeyondFaces = Listed(
        "body-beyond-faces", Severity.Note, "The body reaches beyond the wall's two faces; what stands out is not laid out.",
        "Model piers and steps in thickness as walls of their own.");

    public static readonly FindingCode BevelledAcross = Listed(
        "bevelled-across", Severity.Note, "The top or bottom is bevelled across the thickness; the masonry stops at the lower edge.",
        "Fill the bevel by other means.");

    public static readonly FindingCode LayerSideAssumed = Listed(
        "layer-side-assumed", Severity.Note, "The model does not say on which side of the wall its layers begin; they are counted from the right face.",
        "Export the layers with their direction, or check the side of the masonry.");

    public static readonly FindingCode LayersByWidth = Listed(
        "layers-by-width", Severity.Note, "The body's items bear names of layers that are not as thick; the layers are told apart by their widths.",
        "Check which item is the masonry, or export the model again.");

    public static readonly FindingCode SecondLeaf = Listed(
        "second-leaf", Severity.Note, "The wall has more than one masonry layer; one of them is laid out.",
        "Model each leaf as a wall of its own where both are to be laid out.");

    public static readonly FindingCode WidthNearest = Listed(
        "width-nearest", Severity.Warning, "The catalog has no unit of the masonry layer's width; the nearest one is taken.",
        "Change the layer's thickness to a catalog width, or choose another catalog.");

    public static readonly FindingCode WidthAny = Listed(
        "width-any", Severity.Note, "The catalog has no unit of the masonry layer's width; the wall is laid out in its own width.",
        "Change the layer's thickness to a catalog width, or choose another catalog.");

    public static readonly FindingCode GapClosed = Listed(
        "gap-closed", Severity.Note, "Two walls that meet stop short of each other by more than 5 mm; the gap was closed.",
        "Join the walls in the model.");

    public static readonly FindingCode NearMiss = Listed(
        "near-miss", Severity.Warning, "Two walls nearly meet, 20 to 300 mm apart; they are not joined.",
        "Join the walls in the model, or leave them apart if the gap is meant.");

    public static readonly FindingCode EndOnSlant = Listed(
        "end-on-slant", Severity.Note, "The wall meets another one at an angle; the pieces at its end are cut on a slant across the thickness.",
        "Cut these pieces on site or have them cut to the angle; their lengths are those of the longer face.");

    public static readonly FindingCode WallsOverlap = Listed(
        "walls-overlap", Severity.Warning, "Two walls stand in the same place over a part of their runs; it is laid once.",
        "Trim one of the two walls.");

    public static readonly FindingCode TeeInOpening = Listed(
        "tee-in-opening", Severity.Warning, "A wall meets another one where that has an opening.", "Move the wall or the opening.");

    public static readonly FindingCode OpeningsOverlap = Listed(
        "openings-overlap", Severity.Warning, "Two openings of a wall stand in each other's way.", "Move one of them by the amount named, or make them one opening.");

    public static readonly FindingCode OpeningAtCorner = Listed(
        "opening-at-corner", Severity.Warning, "An opening reaches into the corner with another wall.",
        "Move the opening by the amount named or further, so that a pier is left beside the corner.");

    public static readonly FindingCode OpeningAtTee = Listed(
        "opening-at-tee", Severity.Warning, "An opening reaches behind the end of a wall that meets this one, or into one that crosses it.",
        "Move the opening or the other wall by the amount named.");

    public static readonly FindingCode LintelAtJoint = Listed(
        "lintel-at-joint", Severity.Warning, "A movement joint leaves a lintel too little to bear on.", "Move the opening or the joint by the amount named.");

    public static readonly FindingCode OpeningCutsRim = Listed(
        "opening-cuts-rim", Severity.Note, "A void takes off the wall's end or top; it is taken as the wall's outline.",
        "Nothing, if the wall is meant to end there.");

    public static readonly FindingCode OpeningMissesWall = Listed(
        "opening-misses-wall", Severity.Note, "The opening does not touch the wall's masonry; it is left out.", "Nothing, if that was meant.");

    public static readonly FindingCode OpeningNotRead = Listed(
        "opening-not-read", Severity.Warning, "The opening has no body that can be read, nor anything of known size in it; it is left out.",
        "Export the opening with an extruded body.");

    public static readonly FindingCode OpeningByFilling = Listed(
        "opening-by-filling", Severity.Note, "The opening has no body that can be read; the size of the door or window in it is taken.",
        "Export the opening with its body, or check its size.");

    public static readonly FindingCode OpeningsMerged = Listed(
        "openings-merged", Severity.Note, "Openings of the model that share one void are laid out as one.", "Nothing, if one hole is meant.");

    public static readonly FindingCode DoorWithoutOpening = Listed(
        "door-without-opening", Severity.Warning, "A door or window stands in the wall, but no opening is made for it.",
        "Make an opening for it in the model, or move it to where it belongs.");

    public static readonly FindingCode HoleInBody = Listed(
        "hole-in-body", Severity.Note, "The body has a hole that no opening element makes; it is taken as an opening.",
        "Model the hole as an opening.");

    // Coursing
    public static readonly FindingCode OverlapShort = Listed(
        "overlap-short", Severity.Warning, "Head joints of neighbouring courses are closer than the least overlap.",
        "Move the opening or the wall's end to a module line, or let the engineer accept it.");

    public static readonly FindingCode PieceShort = Listed(
        "piece-short", Severity.Warning, "A piece is shorter than the least piece.",
        "Change the length of the pier or wall by the amount named.");

    public static readonly FindingCode BondSearchEnded = Listed(
        "bond-search-ended", Severity.Note, "The wall's bond is the best found when its search reached its limit: one with fewer cuts or broken rules may exist.",
        "Check whether the wall's outline is meant; where every course ends elsewhere, split the wall.");

    public static readonly FindingCode CoreOnJoint = Listed(
        "core-on-joint", Severity.Warning, "A reinforcement core is too near a head joint of a course.",
        "Move the bar within its range, or let the engineer accept it.");

    public static readonly FindingCode CoreInLintel = Listed(
        "core-in-lintel", Severity.Error, "A reinforcement core passes through a solid lintel.",
        "Move the bar beyond the bearing or use a trough lintel.");

    public static readonly FindingCode CoreInOpen = Listed(
        "core-in-open", Severity.Error, "The bar of a corner stands in the open: neither wall has blocks around it over the courses named.",
        "Move the opening off the corner, or have a post planned there by the engineer.");

    public static readonly FindingCode BarsFarApart = Listed(
        "bars-far-apart", Severity.Warning, "Neighbouring bars stand further apart than the largest spacing: no place between them takes another.",
        "Move the opening or lintel that takes the place, or let the engineer accept it.");

    public static readonly FindingCode BarFarFromJamb = Listed(
        "bar-far-from-jamb", Severity.Warning, "A bar as built stands further from an opening than the rules allow, and no other stands there.",
        "Show the engineer where it stands: who either accepts it or has one placed beside the opening.");

    public static readonly FindingCode CoreNotPossible = Listed(
        "core-not-possible", Severity.Note, "A wall, or a pier of it, has no room for a core.",
        "Ask the engineer whether the wall needs reinforcement.");

    public static readonly FindingCode BondBeamMissing = Listed(
        "bond-beam-missing", Severity.Warning, "A bond beam that the rules ask for is not there.",
        "Change the height that the message names so that a whole course lies there, or have the engineer accept it.");

    public static readonly FindingCode BondBeamInterrupted = Listed(
        "bond-beam-interrupted", Severity.Warning, "An opening, a solid lintel or courses at other heights interrupt a bond beam.",
        "Change the height of the opening or of one wall, take a trough lintel, or have the bars led around by the engineer.");

    public static readonly FindingCode BondBeamShort = Listed(
        "bond-beam-short", Severity.Note, "A bond beam over or under an opening ends nearer to the jamb than the rules ask for.",
        "Hook its bars or turn them around the corner as the engineer says.");

    public static readonly FindingCode BondBeamFormed = Listed(
        "bond-beam-formed", Severity.Warning, "A bond beam is formed in place of laid with trough units.",
        "Have its boards and concrete planned, or add a trough unit of the wall's width to the catalog.");

    public static readonly FindingCode BeamBarsCrowded = Listed(
        "beam-bars-crowded", Severity.Warning, "The bars of a bond beam lie nearer to its faces, or to each other, than the rules ask for.",
        "Take fewer or thinner bars, or a trough unit with a wider hollow.");

    public static readonly FindingCode OutlineNotFilled = Listed(
        "outline-not-filled", Severity.Warning, "A part of the wall's elevation is left without masonry.",
        "Close it with mortar, packing or another material, or change the height.");

    public static readonly FindingCode HeightOffCourse = Listed(
        "height-off-course", Severity.Note, "The wall's height is no whole number of courses: units of some courses are cut in height.",
        "Change the height to one that the message names, or accept the cuts.");

    public static readonly FindingCode WallLengthOffModule = Listed(
        "wall-length-off-module", Severity.Note, "The wall's length is no whole number of modules, by more than its head joints take: units of its courses are cut.",
        "Change the length to one that the message names, or accept the cuts.");

    public static readonly FindingCode SlabStep = Listed(
        "slab-step", Severity.Warning, "Two walls that meet can't share course lines, because of the step between their bases.",
        "Change the step to one that the message names, or accept a butted junction with ties.");

    public static readonly FindingCode BedOutOfRange = Listed(
        "bed-out-of-range", Severity.Warning, "The levelling bed is outside its limits.",
        "Change the course lines or the slab's level.");

    public static readonly FindingCode RipThin = Listed(
        "rip-thin", Severity.Warning, "A ripped course or a piece under a sill is lower than the least rip.",
        "Change the height, or move the sill or head to a course line.");

    // Openings
    public static readonly FindingCode OpeningMoved = Listed(
        "opening-moved", Severity.Warning, "The opening was moved onto module lines and awaits the designer's consent.",
        "Ask the designer to accept the shift, or lay out with --openings keep.");

    public static readonly FindingCode OpeningOffModule = Listed(
        "opening-off-module", Severity.Warning, "A jamb of the opening does not stand on a module line.",
        "Move or widen the opening by the amount named.");

    public static readonly FindingCode HeadOffCourse = Listed(
        "head-off-course", Severity.Warning, "The head of the opening does not lie on a course line.",
        "Move the head to a course line, or accept pieces cut in height at the lintel or a gap over the frame, as the message says.");

    public static readonly FindingCode HeadRaised = Listed(
        "head-raised", Severity.Warning, "The head of the opening was raised to a course line, further than openings may move otherwise.",
        "Accept packing over the frame or a higher frame, or move the head to a course line.");

    public static readonly FindingCode SillOffCourse = Listed(
        "sill-off-course", Severity.Note, "The sill of the opening does not lie on a course line.",
        "Move the sill to the top of a course, or accept lower pieces under it.");

    public static readonly FindingCode PierShort = Listed(
        "pier-short", Severity.Warning, "A pier is shorter than the least pier.", "Make the pier as long as the message says.");

    public static readonly FindingCode PierNotBondable = Listed(
        "pier-not-bondable", Severity.Warning, "No two courses of a pier lap enough with pieces that are long enough.",
        "Make the pier one of the lengths that the message names.");

    public static readonly FindingCode OpeningNotRectangular = Listed(
        "opening-not-rectangular", Severity.Note, "The opening is no rectangle; courses leave a rectangular one around it.",
        "Have its crown or ring formed, or built with pieces cut to the outline.");

    public static readonly FindingCode LintelMissing = Listed(
        "lintel-missing", Severity.Warning, "There is no room for a lintel or its bearing over the opening.",
        "Lower the head, move the opening, or have a beam designed.");

    public static readonly FindingCode BearingShort = Listed(
        "bearing-short", Severity.Warning, "A lintel has less bearing than the rules ask for.",
        "Move the opening away from the wall's end or its neighbour, or have the bearing designed.");

    public static readonly FindingCode LintelFormed = Listed(
        "lintel-formed", Severity.Warning, "No lintel of the catalog spans the opening; a formed beam takes its place.",
        "Have the beam, its bearings and its shoring designed by an engineer.");

    public static readonly FindingCode LintelInMidCourse = Listed(
        "lintel-in-mid-course", Severity.Note, "A lintel lies in mid-course, among pieces that are cut in height and notched to its ends.",
        "Move the head to a course line to save the cuts.");

    public static readonly FindingCode TeeNotBonded = Listed(
        "tee-not-bonded", Severity.Note, "The rules ask for a bonded tee; it is built with ties, for the reason that the message gives.",
        "Change what the message names, or accept ties.");

    // Bars
    public static readonly FindingCode BarsNotFor = Listed(
        "bars-not-for", Severity.Note, "The rules of the vertical bars do not apply everywhere.",
        "Ask the engineer whether the building is one that the rules are for.");

    public static readonly FindingCode BarNotPlaced = Listed(
        "bar-not-placed", Severity.Warning, "A bar that the rule file gives was not placed.",
        "Correct the wall's name or GlobalId or the place in the rule file, or let the engineer move the bar.");

    public static readonly FindingCode BarInDoorway = Listed(
        "bar-in-doorway", Severity.Warning, "A starter bar would stand in a doorway as the model has it.",
        "Have the designer accept the shift of the opening before the bar is cast in, or move the bar.");

    public static readonly FindingCode LapShort = Listed(
        "lap-short", Severity.Warning, "A core is too low for the lap of its bars.",
        "Use a coupler, or let the engineer shorten the lap or leave the bar out.");

    public static readonly FindingCode CouplerHidden = Listed(
        "coupler-hidden", Severity.Warning, "A coupler can't be reached through the inspection notch at the core's foot.",
        "Let the starter stick up less, or make the notch higher.");

    public static readonly FindingCode BarLongerThanStock = Listed(
        "bar-longer-than-stock", Severity.Warning, "A bar of the schedule is longer than any stock length of its size.",
        "Set lengths = \"lift\" in the rules' bars so that bars are spliced, or add the length that is delivered to stock in bar-list.");

    // Embeds
    public static readonly FindingCode EmbedNotPlaced = Listed(
        "embed-not-placed", Severity.Warning, "Something that the job file has built in was left out: no masonry, or no bond beam, is at its place.",
        "Correct the place or the height in the job file, or ask its designer.");

    public static readonly FindingCode EmbedNearBar = Listed(
        "embed-near-bar", Severity.Warning, "Something that the job file has built in stands nearer to a bar or a lap than it should.",
        "Give it play in the job file so that it can move, or ask its designer for another place.");

    // Setting out
    public static readonly FindingCode SlabOutlineAssumed = Listed(
        "slab-outline-assumed", Severity.Note, "The model has no slab under the bars of a storey: the outer faces of its walls are taken for the slab's edges.",
        "Check the slab's edges against the drawings before bars are set, or add the slab to the model.");

    public static readonly FindingCode BarOffEdge = Listed(
        "bar-off-edge", Severity.Note, "Bars stand further from the slab's edges, or nearer to them, than is usual.",
        "Check the slab's edge and the wall's place against the drawings; the bars' places hold.");

    public static readonly FindingCode MapScaleOdd = Listed(
        "map-scale-odd", Severity.Note, "The scale of the model's map conversion fits neither its units nor a map: 1 is taken.",
        "Check the point list against known points, or mend the map conversion in the model.");

    // The slab as built
    public static readonly FindingCode SlabOutOfLevel = Listed(
        "slab-out-of-level", Severity.Warning, "The slab under the first course differs by more than the levelling bed takes.",
        "Do what the message names, or one of the other ways that slab.json lists, before the first course is set.");

    public static readonly FindingCode SlabOffLevel = Listed(
        "slab-off-level", Severity.Warning, "The slab lies further off its designed level than slabs may.", "Ask the engineer before blocks are laid.");

    public static readonly FindingCode BondAroundBars = Listed(
        "bond-around-bars", Severity.Note, "A wall is coursed again around its bars as built, which came too near joints.",
        "Lay it by the changed sheets, which slab writes with --apply; those of the plan are superseded.");

    public static readonly FindingCode BarOutOfPlace = Listed(
        "bar-out-of-place", Severity.Warning, "A bar as built stands out of its core, or brings the core too near a joint, and no bond takes it.",
        "Give the list to the engineer and the building official: bars are neither bent nor drilled in anew without them.");

    public static readonly FindingCode HeightsOfBench = Listed(
        "heights-of-bench", Severity.Note, "The heights of the readings are counted from a bench mark that the model does not know.",
        "Nothing, if one level is used for all; else give heights in the model's or the map's system.");

    public static readonly FindingCode BedBeyondReadings = Listed(
        "bed-beyond-readings", Severity.Warning, "Blocks of the first course lie beyond the outermost readings.", "Read the slab at the outer corners of the walls.");

    public static readonly FindingCode ReadingsSparse = Listed(
        "readings-sparse", Severity.Warning, "Blocks of the first course lie far from every reading.", "Read the slab at least every 8 ft (2.5 m) along both faces.");

    public static readonly FindingCode ControlPointOff = Listed(
        "control-point-off", Severity.Warning, "Control points do not fall on their places.", "Measure them again, or check which points they are.");

    public static readonly FindingCode PointsNotShot = Listed(
        "points-not-shot", Severity.Note, "Rows of the readings file have no reading.", "Nothing, if those points are not needed.");

    public static readonly FindingCode ReadingColumnIgnored = Listed(
        "reading-column-ignored", Severity.Note, "Columns of the readings file are not used.", "Check that none of them holds what should be used.");

    public static readonly FindingCode FlatnessNotJudged = Listed(
        "flatness-not-judged", Severity.Note, "Flatness numbers can't be made of these readings.", "Have the floor measured by ASTM E1155 where they are asked for.");

    public static readonly FindingCode BlockOffLevel = Listed(
        "block-off-level", Severity.Warning, "Blocks of the first course stand too high or too low.", "Sand high ones down; lift low ones and lay them again.");

    // Movement joints
    public static readonly FindingCode MovementJointAdded = Listed(
        "movement-joint-added", Severity.Note, "Movement joints were laid out that the model may not show.",
        "Have the places confirmed by the designer, or give others with --movement-joint.");

    public static readonly FindingCode MovementJointMissing = Listed(
        "movement-joint-missing", Severity.Warning, "A panel is longer than the rules allow, or an opening lacks the joint beside it, and no joint finds room.",
        "Move an opening, or have the engineer accept or reinforce the panel.");

    public static readonly FindingCode MovementJointNotPlaced = Listed(
        "movement-joint-not-placed", Severity.Warning, "A movement joint that was given, or that a step of the wall's height asks for, can't stand at its place.",
        "Give a place that the message names, or have the joint designed.");

    // The lot
    public static readonly FindingCode PlanSited = Listed(
        "plan-sited", Severity.Note, "The plan is mirrored or turned on its lot; walls keep their names and GlobalIds, and no IFC model is written.",
        "Nothing, if the lot's row of the manifest is right.");

    // The drawings
    public static readonly FindingCode GlyphMissing = Listed(
        "glyph-missing", Severity.Warning, "A text on the sheets has characters that the font of the PDF can't set.",
        "Write the name with other letters, or issue these sheets as DXF.");

    /// <summary>All codes, in the order of this file.</summary>
    public static ImmutableArray<FindingCode> All { get; } = [.. _listed];

    private static FindingCode Listed(string id, Severity severity, string meaning, string remedy)
    {
        var code = new FindingCode(id, severity, meaning, remedy);
        _listed.Add(code);
        return code;
    }
}
