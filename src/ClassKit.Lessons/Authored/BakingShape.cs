namespace ClassKit.Lessons.Authored;

/// <summary>What a bread bakes in or on, and so the shape that a volume of it takes.</summary>
public abstract record BakingShape
{
    private const int Halvings = 60;

    /// <summary>
    /// How far real heights and widths lie from those of the shape's bodies, either way: tops are rougher, and a skewer is read to a
    /// millimetre or two. A share, from memory.
    /// </summary>
    public virtual double ShapeError => 0.08;

    /// <summary>The shape in words, for where an expected height comes from.</summary>
    public abstract string Words { get; }

    /// <summary>How high a bread of a volume stands, in millimetres.</summary>
    /// <param name="millilitres">Above 0.</param>
    public abstract double HeightOf(double millilitres);

    /// <summary>How wide a bread of a volume is at its widest, in millimetres.</summary>
    /// <param name="millilitres">Above 0.</param>
    public abstract double DiameterOf(double millilitres);

    /// <summary>Where a volume that grows with height is reached, by halving the interval.</summary>
    protected static double Solve(Func<double, double> volume, double millilitres, double highest)
    {
        ArgumentNullException.ThrowIfNull(volume);
        var (low, high) = (0.0, highest);
        for (var step = 0; step < Halvings; step++)
        {
            var middle = (low + high) / 2;
            if (volume(middle) < millilitres)
                low = middle;
            else
                high = middle;
        }
        return (low + high) / 2;
    }
}
