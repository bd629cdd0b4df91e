namespace FixtureMaker.Design;

/// <summary>Whether a wall's layers follow each other towards its local +y (left) or -y (right) side.</summary>
internal enum LayerSense
{
    Positive,
    Negative,
}
