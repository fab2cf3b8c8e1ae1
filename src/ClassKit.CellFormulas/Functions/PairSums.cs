namespace ClassKit.CellFormulas.Functions;

/// <summary>The sums that describe how two rows of numbers vary together, taken around their means.</summary>
internal sealed class PairSums
{
    private readonly double _meanX;
    private readonly double _meanY;
    private readonly double _xx;
    private readonly double _yy;

    public PairSums(List<double> xs, List<double> ys)
    {
        Count = xs.Count;
        (_meanX, _meanY) = (Statistics.Mean(xs), Statistics.Mean(ys));
        _xx = Statistics.SquaresAround(xs, _meanX);
        _yy = Statistics.SquaresAround(ys, _meanY);
        var products = new List<double>(xs.Count);
        for (var at = 0; at < xs.Count; at++)
            products.Add((xs[at] - _meanX) * (ys[at] - _meanY));
        Xy = Summation.Of(products);
    }

    public int Count { get; }

    public double Xy { get; }

    /// <summary>Not a number when one row does not vary.</summary>
    public double Correlation => Xy / Math.Sqrt(_xx * _yy);

    public double Slope => Xy / _xx;

    /// <summary>How far the points lie from the line, with two degrees of freedom less than there are points.</summary>
    public double StandardError => Math.Sqrt((_yy - Xy * Xy / _xx) / (Count - 2));

    /// <summary>The line's height over a place.</summary>
    public double At(double x) => _meanY + Slope * (x - _meanX);
}
