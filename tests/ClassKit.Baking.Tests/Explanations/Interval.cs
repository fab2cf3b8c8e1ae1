namespace ClassKit.Baking.Tests.Explanations;

/// <summary>All numbers from one to another.</summary>
internal readonly record struct Interval(double Low, double High)
{
    public bool Meets(Interval other) => Low <= other.High + Slack(other) && other.Low <= High + Slack(other);

    public Interval Root() => new(Math.Sqrt(Math.Max(0, Low)), Math.Sqrt(Math.Max(0, High)));

    public Interval Pow(Interval exponent) =>
        Hull(Math.Pow(Low, exponent.Low), Math.Pow(Low, exponent.High), Math.Pow(High, exponent.Low), Math.Pow(High, exponent.High));

    public Interval Least(Interval other) => new(Math.Min(Low, other.Low), Math.Min(High, other.High));

    public static Interval operator +(Interval left, Interval right) => new(left.Low + right.Low, left.High + right.High);

    public static Interval operator -(Interval left, Interval right) => new(left.Low - right.High, left.High - right.Low);

    public static Interval operator *(Interval left, Interval right) =>
        Hull(left.Low * right.Low, left.Low * right.High, left.High * right.Low, left.High * right.High);

    public static Interval operator /(Interval left, Interval right)
    {
        Assert.True(right.Low > 0 || right.High < 0, $"divided by something that may be 0: {right}");
        return Hull(left.Low / right.Low, left.Low / right.High, left.High / right.Low, left.High / right.High);
    }

    /// <summary>The last bits of a double.</summary>
    private double Slack(Interval other) => 1e-12 * Math.Max(Math.Abs(High), Math.Abs(other.High));

    private static Interval Hull(params double[] ends) => new(ends.Min(), ends.Max());
}
