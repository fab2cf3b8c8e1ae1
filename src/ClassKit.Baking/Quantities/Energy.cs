namespace ClassKit.Baking.Quantities;

/// <summary>An amount of heat or other energy. <c>default</c> is none, 0 J.</summary>
public readonly record struct Energy
{
    /// <summary>Joules in a British thermal unit of the International Table (NIST SP 811, appendix B.8).</summary>
    public const double JoulesPerBtu = 1055.05585262;

    private Energy(double joules) => Joules = joules;

    /// <summary>In joules.</summary>
    public double Joules { get; }

    /// <summary>In British thermal units of the International Table.</summary>
    public double Btu => Joules / JoulesPerBtu;

    /// <summary>From joules; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Energy FromJoules(double joules) =>
        double.IsFinite(joules)
            ? new(joules)
            : throw new ArgumentOutOfRangeException(nameof(joules), joules, "An energy is a finite number of joules.");

    /// <summary>From British thermal units of the International Table; finite.</summary>
    public static Energy FromBtu(double btu) => FromJoules(btu * JoulesPerBtu);
}
