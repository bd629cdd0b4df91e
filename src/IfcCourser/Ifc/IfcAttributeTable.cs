namespace IfcCourser.Ifc;

/// <summary>
/// The attributes, in file order, of the entities that are read; a line for each entity. A name that has its own line stands
/// for that line's attributes. Behind @ stands the first schema that has the entity or attribute. Source: the EXPRESS
/// definitions IFC2X3 TC1, IFC4 ADD2 TC1 and IFC4X3 ADD2 (ISO 16739-1:2024); attributes renamed since IFC2X3 or IFC4 bear
/// one name here: Identification (was Id), Description (Specification in IFC4X3 properties).
/// </summary>
internal static class IfcAttributeTable
{
    public const string Text =
        """
        IfcProfileDef: ProfileType ProfileName
        IfcRoot: GlobalId OwnerHistory Name Description
        IfcObject: IfcRoot ObjectType
        IfcProduct: IfcObject ObjectPlacement Representation
        IfcElement: IfcProduct Tag
        IfcWall: IfcElement PredefinedType@4
        IfcWallStandardCase: IfcElement PredefinedType@4
        IfcWallElementedCase@4: IfcElement PredefinedType
        IfcOpeningElement: IfcElement PredefinedType@4
        IfcOpeningStandardCase@4: IfcElement PredefinedType
        IfcDoor: IfcElement OverallHeight OverallWidth PredefinedType@4 OperationType@4
            UserDefinedOperationType@4
        IfcDoorStandardCase@4: IfcElement OverallHeight OverallWidth PredefinedType OperationType
            UserDefinedOperationType
        IfcWindow: IfcElement OverallHeight OverallWidth PredefinedType@4 PartitioningType@4
            UserDefinedPartitioningType@4
        IfcWindowStandardCase@4: IfcElement OverallHeight OverallWidth PredefinedType PartitioningType
            UserDefinedPartitioningType
        IfcBuildingElementPart: IfcElement PredefinedType@4
        IfcMember: IfcElement PredefinedType@4
        IfcPlate: IfcElement PredefinedType@4
        IfcBeam: IfcElement PredefinedType@4
        IfcColumn: IfcElement PredefinedType@4
        IfcSlab: IfcElement PredefinedType
        IfcBuildingStorey: IfcProduct LongName CompositionType Elevation
        IfcBuilding: IfcProduct LongName CompositionType ElevationOfRefHeight ElevationOfTerrain BuildingAddress
        IfcSite: IfcProduct LongName CompositionType RefLatitude RefLongitude RefElevation LandTitleNumber
            SiteAddress
        IfcElementAssembly: IfcElement AssemblyPlace PredefinedType
        IfcGrid: IfcProduct UAxes VAxes WAxes PredefinedType@4
        IfcWallType: IfcRoot ApplicableOccurrence HasPropertySets RepresentationMaps Tag ElementType
            PredefinedType
        IfcProject: IfcObject LongName Phase RepresentationContexts UnitsInContext
        IfcUnitAssignment: Units
        IfcSIUnit: Dimensions UnitType Prefix Name
        IfcConversionBasedUnit: Dimensions UnitType Name ConversionFactor
        IfcConversionBasedUnitWithOffset@4: Dimensions UnitType Name ConversionFactor ConversionOffset
        IfcMeasureWithUnit: ValueComponent UnitComponent
        IfcOwnerHistory: OwningUser OwningApplication State ChangeAction LastModifiedDate LastModifyingUser
            LastModifyingApplication CreationDate
        IfcApplication: ApplicationDeveloper Version ApplicationFullName ApplicationIdentifier
        IfcOrganization: Identification Name Description Roles Addresses
        IfcPerson: Identification FamilyName GivenName MiddleNames PrefixTitles SuffixTitles Roles Addresses
        IfcPersonAndOrganization: ThePerson TheOrganization Roles
        IfcRelVoidsElement: IfcRoot RelatingBuildingElement RelatedOpeningElement
        IfcRelFillsElement: IfcRoot RelatingOpeningElement RelatedBuildingElement
        IfcRelAggregates: IfcRoot RelatingObject RelatedObjects
        IfcRelContainedInSpatialStructure: IfcRoot RelatedElements RelatingStructure
        IfcRelDefinesByProperties: IfcRoot RelatedObjects RelatingPropertyDefinition
        IfcRelDefinesByType: IfcRoot RelatedObjects RelatingType
        IfcRelAssociatesMaterial: IfcRoot RelatedObjects RelatingMaterial
        IfcRelConnectsPathElements: IfcRoot ConnectionGeometry RelatingElement RelatedElement
            RelatingPriorities RelatedPriorities RelatedConnectionType RelatingConnectionType
        IfcPropertySet: IfcRoot HasProperties
        IfcPropertySingleValue: Name Description NominalValue Unit
        IfcPropertyEnumeratedValue: Name Description EnumerationValues EnumerationReference
        IfcElementQuantity: IfcRoot MethodOfMeasurement Quantities
        IfcQuantityLength: Name Description Unit LengthValue Formula@4
        IfcQuantityArea: Name Description Unit AreaValue Formula@4
        IfcQuantityVolume: Name Description Unit VolumeValue Formula@4
        IfcQuantityCount: Name Description Unit CountValue Formula@4
        IfcQuantityWeight: Name Description Unit WeightValue Formula@4
        IfcQuantityTime: Name Description Unit TimeValue Formula@4
        IfcPhysicalComplexQuantity: Name Description HasQuantities Discrimination Quality Usage
        IfcMaterial: Name Description@4 Category@4
        IfcMaterialList: Materials
        IfcMaterialLayer: Material LayerThickness IsVentilated Name@4 Description@4 Category@4 Priority@4
        IfcMaterialLayerSet: MaterialLayers LayerSetName Description@4
        IfcMaterialLayerSetUsage: ForLayerSet LayerSetDirection DirectionSense OffsetFromReferenceLine
            ReferenceExtent@4
        IfcMaterialLayerWithOffsets@4: Material LayerThickness IsVentilated Name Description Category Priority
            OffsetDirection OffsetValues
        IfcMaterialConstituent@4: Name Description Material Fraction Category
        IfcMaterialConstituentSet@4: Name Description MaterialConstituents
        IfcMaterialProfile@4: Name Description Material Profile Priority Category
        IfcMaterialProfileSet@4: Name Description MaterialProfiles CompositeProfile
        IfcMaterialProfileSetUsage@4: ForProfileSet CardinalPoint ReferenceExtent
        IfcLocalPlacement: PlacementRelTo RelativePlacement
        IfcLinearPlacement@4X3: PlacementRelTo RelativePlacement CartesianPosition
        IfcGridPlacement: PlacementRelTo@4X3 PlacementLocation PlacementRefDirection
        IfcVirtualGridIntersection: IntersectingAxes OffsetDistances
        IfcGridAxis: AxisTag AxisCurve SameSense
        IfcAxis1Placement: Location Axis
        IfcAxis2Placement2D: Location RefDirection
        IfcAxis2Placement3D: Location Axis RefDirection
        IfcCartesianPoint: Coordinates
        IfcDirection: DirectionRatios
        IfcVector: Orientation Magnitude
        IfcCartesianTransformationOperator2D: Axis1 Axis2 LocalOrigin Scale
        IfcCartesianTransformationOperator2DnonUniform: Axis1 Axis2 LocalOrigin Scale Scale2
        IfcCartesianTransformationOperator3D: Axis1 Axis2 LocalOrigin Scale Axis3
        IfcCartesianTransformationOperator3DnonUniform: Axis1 Axis2 LocalOrigin Scale Axis3 Scale2 Scale3
        IfcProductDefinitionShape: Name Description Representations
        IfcShapeRepresentation: ContextOfItems RepresentationIdentifier RepresentationType Items
        IfcShapeAspect: ShapeRepresentations Name Description ProductDefinitional PartOfProductDefinitionShape
        IfcGeometricRepresentationContext: ContextIdentifier ContextType CoordinateSpaceDimension Precision
            WorldCoordinateSystem TrueNorth
        IfcGeometricRepresentationSubContext: ContextIdentifier ContextType CoordinateSpaceDimension Precision
            WorldCoordinateSystem TrueNorth ParentContext TargetScale TargetView UserDefinedTargetView
        IfcMappedItem: MappingSource MappingTarget
        IfcRepresentationMap: MappingOrigin MappedRepresentation
        IfcExtrudedAreaSolid: SweptArea Position ExtrudedDirection Depth
        IfcExtrudedAreaSolidTapered@4: SweptArea Position ExtrudedDirection Depth EndSweptArea
        IfcRevolvedAreaSolid: SweptArea Position Axis Angle
        IfcBooleanResult: Operator FirstOperand SecondOperand
        IfcBooleanClippingResult: Operator FirstOperand SecondOperand
        IfcHalfSpaceSolid: BaseSurface AgreementFlag
        IfcBoxedHalfSpace: BaseSurface AgreementFlag Enclosure
        IfcPolygonalBoundedHalfSpace: BaseSurface AgreementFlag Position PolygonalBoundary
        IfcPlane: Position
        IfcBlock: Position XLength YLength ZLength
        IfcCsgSolid: TreeRootExpression
        IfcFacetedBrep: Outer
        IfcFacetedBrepWithVoids: Outer Voids
        IfcAdvancedBrep@4: Outer
        IfcClosedShell: CfsFaces
        IfcOpenShell: CfsFaces
        IfcConnectedFaceSet: CfsFaces
        IfcShellBasedSurfaceModel: SbsmBoundary
        IfcFaceBasedSurfaceModel: FbsmFaces
        IfcFace: Bounds
        IfcFaceSurface: Bounds FaceSurface SameSense
        IfcAdvancedFace@4: Bounds FaceSurface SameSense
        IfcFaceBound: Bound Orientation
        IfcFaceOuterBound: Bound Orientation
        IfcPolyLoop: Polygon
        IfcEdgeLoop: EdgeList
        IfcOrientedEdge: EdgeStart EdgeEnd EdgeElement Orientation
        IfcEdgeCurve: EdgeStart EdgeEnd EdgeGeometry SameSense
        IfcVertexPoint: VertexGeometry
        IfcTriangulatedFaceSet@4: Coordinates Normals Closed CoordIndex PnIndex
        IfcPolygonalFaceSet@4: Coordinates Closed Faces PnIndex
        IfcIndexedPolygonalFace@4: CoordIndex
        IfcIndexedPolygonalFaceWithVoids@4: CoordIndex InnerCoordIndices
        IfcCartesianPointList2D@4: CoordList TagList@4X3
        IfcCartesianPointList3D@4: CoordList TagList@4X3
        IfcBoundingBox: Corner XDim YDim ZDim
        IfcArbitraryClosedProfileDef: IfcProfileDef OuterCurve
        IfcArbitraryProfileDefWithVoids: IfcProfileDef OuterCurve InnerCurves
        IfcArbitraryOpenProfileDef: IfcProfileDef Curve
        IfcCenterLineProfileDef: IfcProfileDef Curve Thickness
        IfcRectangleProfileDef: IfcProfileDef Position XDim YDim
        IfcRoundedRectangleProfileDef: IfcProfileDef Position XDim YDim RoundingRadius
        IfcRectangleHollowProfileDef: IfcProfileDef Position XDim YDim WallThickness InnerFilletRadius
            OuterFilletRadius
        IfcTrapeziumProfileDef: IfcProfileDef Position BottomXDim TopXDim YDim TopXOffset
        IfcCircleProfileDef: IfcProfileDef Position Radius
        IfcCircleHollowProfileDef: IfcProfileDef Position Radius WallThickness
        IfcEllipseProfileDef: IfcProfileDef Position SemiAxis1 SemiAxis2
        IfcDerivedProfileDef: IfcProfileDef ParentProfile Operator Label
        IfcMirroredProfileDef@4: IfcProfileDef ParentProfile Operator Label
        IfcCompositeProfileDef: IfcProfileDef Profiles Label
        IfcPolyline: Points
        IfcIndexedPolyCurve@4: Points Segments SelfIntersect
        IfcCompositeCurve: Segments SelfIntersect
        IfcCompositeCurveSegment: Transition SameSense ParentCurve
        IfcTrimmedCurve: BasisCurve Trim1 Trim2 SenseAgreement MasterRepresentation
        IfcLine: Pnt Dir
        IfcCircle: Position Radius
        IfcEllipse: Position SemiAxis1 SemiAxis2
        """;
}
