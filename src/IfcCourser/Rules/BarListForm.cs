namespace IfcCourser.Rules;

/// <summary>Whose shapes and bends a bar list uses.</summary>
public enum BarListForm
{
    /// <summary>Shape codes, dimensions and lengths of BS 8666:2020, as EN ISO 3766 schedules are filled in.</summary>
    Bs8666,

    /// <summary>The list form of ACI 315 with the standard hooks of ACI 318.</summary>
    Aci315,
}
