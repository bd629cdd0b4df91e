namespace IfcCourser.Output.IfcWriteBack.Openings;

/// <summary>Why an opening of the model is not moved.</summary>
public enum MoveHindrance
{
    /// <summary>No element of the model makes the void: it is drawn into the wall's body.</summary>
    NoElement,

    /// <summary>Its wall is curved, so that a shift would also turn it.</summary>
    CurvedWall,

    /// <summary>It has no local placement with a point of its own.</summary>
    Placement,
}
