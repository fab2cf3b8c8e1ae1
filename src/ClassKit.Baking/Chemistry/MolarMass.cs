namespace ClassKit.Baking;

/// <summary>Molar masses in g/mol.</summary>
/// <remarks>From IUPAC's conventional atomic weights: H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, S 32.06, Cl 35.45, K 39.098.</remarks>
public static class MolarMass
{
    private const double H = 1.008;
    private const double C = 12.011;
    private const double N = 14.007;
    private const double O = 15.999;
    private const double Na = 22.990;
    private const double K = 39.098;

    /// <summary>CO2.</summary>
    public const double CarbonDioxide = C + 2 * O;

    /// <summary>H2O.</summary>
    public const double Water = 2 * H + O;

    /// <summary>Baking soda, NaHCO3.</summary>
    public const double SodiumBicarbonate = Na + H + C + 3 * O;

    /// <summary>KHCO3.</summary>
    public const double PotassiumBicarbonate = K + H + C + 3 * O;

    /// <summary>Baker's ammonia, NH4HCO3.</summary>
    public const double AmmoniumBicarbonate = N + 5 * H + C + 3 * O;

    /// <summary>Washing soda, Na2CO3: what heat alone leaves of baking soda.</summary>
    public const double SodiumCarbonate = 2 * Na + C + 3 * O;

    /// <summary>Lactic acid, C3H6O3.</summary>
    public const double LacticAcid = 3 * C + 6 * H + 3 * O;

    /// <summary>Cream of tartar, KHC4H4O6.</summary>
    public const double PotassiumBitartrate = K + 5 * H + 4 * C + 6 * O;

    /// <summary>Glucose, C6H12O6.</summary>
    public const double Glucose = 6 * C + 12 * H + 6 * O;

    /// <summary>Sucrose or maltose, C12H22O11.</summary>
    public const double Sucrose = 12 * C + 22 * H + 11 * O;

    /// <summary>Ethanol, C2H5OH.</summary>
    public const double Ethanol = 2 * C + 6 * H + O;
}
