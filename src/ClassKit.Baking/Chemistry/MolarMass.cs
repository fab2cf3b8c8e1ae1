namespace ClassKit.Baking.Chemistry;

/// <summary>Molar masses in g/mol.</summary>
/// <remarks>
/// From IUPAC's conventional atomic weights: H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, Al 26.982, P 30.974, S 32.06, Cl 35.45, K
/// 39.098, Ca 40.078.
/// </remarks>
public static class MolarMass
{
    private const double H = 1.008;
    private const double C = 12.011;
    private const double N = 14.007;
    private const double O = 15.999;
    private const double Na = 22.990;
    private const double Al = 26.982;
    private const double P = 30.974;
    private const double S = 32.06;
    private const double Cl = 35.45;
    private const double K = 39.098;
    private const double Ca = 40.078;

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

    /// <summary>Tartaric acid, C4H6O6.</summary>
    public const double TartaricAcid = 4 * C + 6 * H + 6 * O;

    /// <summary>Citric acid, C6H8O7.</summary>
    public const double CitricAcid = 6 * C + 8 * H + 7 * O;

    /// <summary>Acetic acid, C2H4O2, as in vinegar.</summary>
    public const double AceticAcid = 2 * C + 4 * H + 2 * O;

    /// <summary>Fumaric acid, C4H4O4.</summary>
    public const double FumaricAcid = 4 * C + 4 * H + 4 * O;

    /// <summary>Glucono-delta-lactone, C6H10O6.</summary>
    public const double GluconoDeltaLactone = 6 * C + 10 * H + 6 * O;

    /// <summary>Monocalcium phosphate monohydrate, Ca(H2PO4)2·H2O.</summary>
    public const double MonocalciumPhosphate = AnhydrousMonocalciumPhosphate + Water;

    /// <summary>Anhydrous monocalcium phosphate, Ca(H2PO4)2.</summary>
    public const double AnhydrousMonocalciumPhosphate = Ca + 4 * H + 2 * P + 8 * O;

    /// <summary>Sodium acid pyrophosphate, Na2H2P2O7.</summary>
    public const double SodiumAcidPyrophosphate = 2 * Na + 2 * H + 2 * P + 7 * O;

    /// <summary>Sodium aluminium sulphate, NaAl(SO4)2.</summary>
    public const double SodiumAluminiumSulphate = Na + Al + 2 * S + 8 * O;

    /// <summary>Sodium aluminium phosphate, NaH14Al3(PO4)8·4H2O.</summary>
    public const double SodiumAluminiumPhosphate = Na + 14 * H + 3 * Al + 8 * P + 32 * O + 4 * Water;

    /// <summary>Dicalcium phosphate dihydrate, CaHPO4·2H2O.</summary>
    public const double DicalciumPhosphate = Ca + H + P + 4 * O + 2 * Water;

    /// <summary>Ammonia, NH3.</summary>
    public const double Ammonia = N + 3 * H;

    /// <summary>Salt, NaCl.</summary>
    public const double SodiumChloride = Na + Cl;

    /// <summary>Sodium, Na.</summary>
    public const double Sodium = Na;

    /// <summary>Glucose, C6H12O6.</summary>
    public const double Glucose = 6 * C + 12 * H + 6 * O;

    /// <summary>Sucrose or maltose, C12H22O11.</summary>
    public const double Sucrose = 12 * C + 22 * H + 11 * O;

    /// <summary>Ethanol, C2H5OH.</summary>
    public const double Ethanol = 2 * C + 6 * H + O;
}
