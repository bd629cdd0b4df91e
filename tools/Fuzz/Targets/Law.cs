namespace Fuzz.Targets;

/// <summary>What must be true of every input; broken, it is reported as a crash.</summary>
internal static class Law
{
    public static void Holds(bool holds, string law)
    {
        if (!holds)
        {
            throw new InvalidOperationException(law);
        }
    }
}
