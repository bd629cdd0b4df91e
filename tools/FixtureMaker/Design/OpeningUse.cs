namespace FixtureMaker.Design;

/// <summary>What an opening is for; doors and windows get a filling of their own.</summary>
internal enum OpeningUse
{
    Door,
    Window,
    Void,
    Sleeve,
}
