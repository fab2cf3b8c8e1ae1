using System.Collections.Frozen;

namespace ClassKit.CellFormulas.Functions.Units;

/// <summary>
/// The units of CONVERT. Factors are exact where the unit is defined exactly and are put together from their definitions.
/// </summary>
/// <remarks>
/// OpenFormula 1.3, 6.16 (CONVERT); factors from NIST SP 811, Appendix B.8, and the international yard and pound agreement of 1959.
/// </remarks>
internal static class UnitTable
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double Yard = 3 * Foot;
    private const double Mile = 1760 * Yard;
    private const double SurveyFoot = 1200.0 / 3937;
    private const double NauticalMile = 1852;
    private const double LightYear = 9.46073047258080e15;
    private const double Parsec = 3.08567758128155e16;
    private const double Point = Inch / 72;
    private const double PoundMass = 453.59237;
    private const double Gravity = 9.80665;
    private const double PoundForce = PoundMass / 1000 * Gravity;
    private const double Litre = 0.001;
    private const double Gallon = 231 * Inch * Inch * Inch;
    private const double ImperialGallon = 4.54609 * Litre;
    private const double ThermalUnit = 1055.05585262;
    private const double Day = 86400;

    private static readonly FrozenDictionary<string, ConvertUnit> Units = new ConvertUnit[]
    {
        new("g", "mass", 1, UnitPrefixes.Decimal),
        new("sg", "mass", PoundForce / Foot * 1000),
        new("lbm", "mass", PoundMass),
        new("u", "mass", 1.66053906660e-24, UnitPrefixes.Decimal),
        new("ozm", "mass", PoundMass / 16),
        new("grain", "mass", PoundMass / 7000),
        new("pweight", "mass", PoundMass / 7000 * 24),
        new("stone", "mass", PoundMass * 14),
        new("cwt", "mass", PoundMass * 100),
        new("shweight", "mass", PoundMass * 100),
        new("uk_cwt", "mass", PoundMass * 112),
        new("lcwt", "mass", PoundMass * 112),
        new("hweight", "mass", PoundMass * 112),
        new("ton", "mass", PoundMass * 2000),
        new("uk_ton", "mass", PoundMass * 2240),
        new("LTON", "mass", PoundMass * 2240),
        new("brton", "mass", PoundMass * 2240),
        new("m", "length", 1, UnitPrefixes.Decimal),
        new("mi", "length", Mile),
        new("Nmi", "length", NauticalMile),
        new("in", "length", Inch),
        new("ft", "length", Foot),
        new("yd", "length", Yard),
        new("ell", "length", 45 * Inch),
        new("ang", "length", 1e-10, UnitPrefixes.Decimal),
        new("ly", "length", LightYear, UnitPrefixes.Decimal),
        new("parsec", "length", Parsec, UnitPrefixes.Decimal),
        new("pc", "length", Parsec, UnitPrefixes.Decimal),
        new("Picapt", "length", Point),
        new("Pica", "length", Point),
        new("pica", "length", 12 * Point),
        new("survey_mi", "length", 5280 * SurveyFoot),
        new("yr", "time", 365.25 * Day),
        new("day", "time", Day),
        new("d", "time", Day),
        new("hr", "time", 3600),
        new("mn", "time", 60),
        new("min", "time", 60),
        new("sec", "time", 1, UnitPrefixes.Decimal),
        new("s", "time", 1, UnitPrefixes.Decimal),
        new("Pa", "pressure", 1, UnitPrefixes.Decimal),
        new("p", "pressure", 1, UnitPrefixes.Decimal),
        new("atm", "pressure", 101325, UnitPrefixes.Decimal),
        new("at", "pressure", 101325, UnitPrefixes.Decimal),
        new("mmHg", "pressure", 133.322, UnitPrefixes.Decimal),
        new("psi", "pressure", PoundForce / (Inch * Inch)),
        new("Torr", "pressure", 101325.0 / 760),
        new("N", "force", 1, UnitPrefixes.Decimal),
        new("dyn", "force", 1e-5, UnitPrefixes.Decimal),
        new("dy", "force", 1e-5, UnitPrefixes.Decimal),
        new("lbf", "force", PoundForce),
        new("pond", "force", Gravity / 1000, UnitPrefixes.Decimal),
        new("J", "energy", 1, UnitPrefixes.Decimal),
        new("e", "energy", 1e-7, UnitPrefixes.Decimal),
        new("c", "energy", 4.184, UnitPrefixes.Decimal),
        new("cal", "energy", 4.1868, UnitPrefixes.Decimal),
        new("eV", "energy", 1.602176634e-19, UnitPrefixes.Decimal),
        new("ev", "energy", 1.602176634e-19, UnitPrefixes.Decimal),
        new("HPh", "energy", 550 * Foot * PoundForce * 3600),
        new("hh", "energy", 550 * Foot * PoundForce * 3600),
        new("Wh", "energy", 3600, UnitPrefixes.Decimal),
        new("wh", "energy", 3600, UnitPrefixes.Decimal),
        new("flb", "energy", Foot * PoundForce),
        new("BTU", "energy", ThermalUnit),
        new("btu", "energy", ThermalUnit),
        new("HP", "power", 550 * Foot * PoundForce),
        new("h", "power", 550 * Foot * PoundForce),
        new("PS", "power", 75 * Gravity),
        new("W", "power", 1, UnitPrefixes.Decimal),
        new("w", "power", 1, UnitPrefixes.Decimal),
        new("T", "magnetism", 1, UnitPrefixes.Decimal),
        new("ga", "magnetism", 1e-4, UnitPrefixes.Decimal),
        new("C", "temperature", 1, Zero: 273.15),
        new("cel", "temperature", 1, Zero: 273.15),
        new("F", "temperature", 5.0 / 9, Zero: 459.67 * 5 / 9),
        new("fah", "temperature", 5.0 / 9, Zero: 459.67 * 5 / 9),
        new("K", "temperature", 1, UnitPrefixes.Decimal),
        new("kel", "temperature", 1, UnitPrefixes.Decimal),
        new("Rank", "temperature", 5.0 / 9),
        new("Reau", "temperature", 1.25, Zero: 273.15),
        new("tsp", "volume", Gallon / 768),
        new("tspm", "volume", 5e-6),
        new("tbs", "volume", Gallon / 256),
        new("oz", "volume", Gallon / 128),
        new("cup", "volume", Gallon / 16),
        new("pt", "volume", Gallon / 8),
        new("us_pt", "volume", Gallon / 8),
        new("uk_pt", "volume", ImperialGallon / 8),
        new("qt", "volume", Gallon / 4),
        new("uk_qt", "volume", ImperialGallon / 4),
        new("gal", "volume", Gallon),
        new("uk_gal", "volume", ImperialGallon),
        new("l", "volume", Litre, UnitPrefixes.Decimal),
        new("L", "volume", Litre, UnitPrefixes.Decimal),
        new("lt", "volume", Litre, UnitPrefixes.Decimal),
        new("ang3", "volume", 1e-30, UnitPrefixes.Decimal, 3),
        new("ang^3", "volume", 1e-30, UnitPrefixes.Decimal, 3),
        new("barrel", "volume", 42 * Gallon),
        new("bushel", "volume", 2150.42 * Inch * Inch * Inch),
        new("ft3", "volume", Foot * Foot * Foot),
        new("ft^3", "volume", Foot * Foot * Foot),
        new("in3", "volume", Inch * Inch * Inch),
        new("in^3", "volume", Inch * Inch * Inch),
        new("ly3", "volume", LightYear * LightYear * LightYear),
        new("ly^3", "volume", LightYear * LightYear * LightYear),
        new("m3", "volume", 1, UnitPrefixes.Decimal, 3),
        new("m^3", "volume", 1, UnitPrefixes.Decimal, 3),
        new("mi3", "volume", Mile * Mile * Mile),
        new("mi^3", "volume", Mile * Mile * Mile),
        new("yd3", "volume", Yard * Yard * Yard),
        new("yd^3", "volume", Yard * Yard * Yard),
        new("Nmi3", "volume", NauticalMile * NauticalMile * NauticalMile),
        new("Nmi^3", "volume", NauticalMile * NauticalMile * NauticalMile),
        new("Picapt3", "volume", Point * Point * Point),
        new("Picapt^3", "volume", Point * Point * Point),
        new("Pica3", "volume", Point * Point * Point),
        new("Pica^3", "volume", Point * Point * Point),
        new("GRT", "volume", 100 * Foot * Foot * Foot),
        new("regton", "volume", 100 * Foot * Foot * Foot),
        new("MTON", "volume", 40 * Foot * Foot * Foot),
        new("uk_acre", "area", 4840 * Yard * Yard),
        new("us_acre", "area", 43560 * SurveyFoot * SurveyFoot),
        new("ang2", "area", 1e-20, UnitPrefixes.Decimal, 2),
        new("ang^2", "area", 1e-20, UnitPrefixes.Decimal, 2),
        new("ar", "area", 100, UnitPrefixes.Decimal),
        new("ha", "area", 1e4),
        new("ft2", "area", Foot * Foot),
        new("ft^2", "area", Foot * Foot),
        new("in2", "area", Inch * Inch),
        new("in^2", "area", Inch * Inch),
        new("ly2", "area", LightYear * LightYear),
        new("ly^2", "area", LightYear * LightYear),
        new("m2", "area", 1, UnitPrefixes.Decimal, 2),
        new("m^2", "area", 1, UnitPrefixes.Decimal, 2),
        new("Morgen", "area", 2500),
        new("mi2", "area", Mile * Mile),
        new("mi^2", "area", Mile * Mile),
        new("Nmi2", "area", NauticalMile * NauticalMile),
        new("Nmi^2", "area", NauticalMile * NauticalMile),
        new("Picapt2", "area", Point * Point),
        new("Picapt^2", "area", Point * Point),
        new("Pica2", "area", Point * Point),
        new("Pica^2", "area", Point * Point),
        new("yd2", "area", Yard * Yard),
        new("yd^2", "area", Yard * Yard),
        new("bit", "information", 1, UnitPrefixes.Binary),
        new("byte", "information", 8, UnitPrefixes.Binary),
        new("admkn", "speed", 6080 * Foot / 3600),
        new("kn", "speed", NauticalMile / 3600),
        new("m/h", "speed", 1.0 / 3600, UnitPrefixes.Decimal),
        new("m/hr", "speed", 1.0 / 3600, UnitPrefixes.Decimal),
        new("m/s", "speed", 1, UnitPrefixes.Decimal),
        new("m/sec", "speed", 1, UnitPrefixes.Decimal),
        new("mph", "speed", Mile / 3600),
    }.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, double> DecimalPrefixes = new (string Symbol, double Multiple)[]
    {
        ("Y", 1e24),
        ("Z", 1e21),
        ("E", 1e18),
        ("P", 1e15),
        ("T", 1e12),
        ("G", 1e9),
        ("M", 1e6),
        ("k", 1e3),
        ("h", 1e2),
        ("da", 10),
        ("e", 10),
        ("d", 1e-1),
        ("c", 1e-2),
        ("m", 1e-3),
        ("u", 1e-6),
        ("n", 1e-9),
        ("p", 1e-12),
        ("f", 1e-15),
        ("a", 1e-18),
        ("z", 1e-21),
        ("y", 1e-24),
    }.ToFrozenDictionary(prefix => prefix.Symbol, prefix => prefix.Multiple, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, double> BinaryPrefixes = new (string Symbol, double Multiple)[]
    {
        ("ki", 1L << 10),
        ("Mi", 1L << 20),
        ("Gi", 1L << 30),
        ("Ti", 1L << 40),
        ("Pi", 1L << 50),
        ("Ei", 1L << 60),
        ("Zi", 1024.0 * (1L << 60)),
        ("Yi", 1024.0 * 1024 * (1L << 60)),
    }.ToFrozenDictionary(prefix => prefix.Symbol, prefix => prefix.Multiple, StringComparer.Ordinal);

    public static IEnumerable<ConvertUnit> All => Units.Values;

    /// <summary>Finds a unit with or without a prefix. A whole symbol comes before a prefixed one: <c>cal</c> is the calorie.</summary>
    /// <returns>The unit and what its prefix multiplies it by; null for an unknown symbol.</returns>
    public static (ConvertUnit Unit, double Multiple)? Find(string symbol)
    {
        if (Units.TryGetValue(symbol, out var unit))
            return (unit, 1);
        for (var length = 1; length <= 2 && length < symbol.Length; length++)
        {
            if (!Units.TryGetValue(symbol[length..], out unit) || unit.Prefixes == UnitPrefixes.None)
                continue;
            var prefix = symbol[..length];
            if (DecimalPrefixes.TryGetValue(prefix, out var multiple))
                return (unit, Math.Pow(multiple, unit.Power));
            if (unit.Prefixes == UnitPrefixes.Binary && BinaryPrefixes.TryGetValue(prefix, out multiple))
                return (unit, multiple);
        }

        return null;
    }
}
