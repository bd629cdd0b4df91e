namespace ReferenceOptimum.Bars;

/// <summary>Masonry at one height that asks for bars no farther apart than the largest spacing; twice its ends along the run.</summary>
internal readonly record struct BarRow(long Height, long From2, long To2)
{
    public bool Holds(BarOption bar) => bar.At2 >= From2 && bar.At2 <= To2 && bar.From < Height && bar.To > Height;
}
