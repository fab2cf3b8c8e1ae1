using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.GasBudgets;

/// <summary>What a gas budget assumes. Each is a setting because no single value is right for every dough.</summary>
/// <param name="AirShare">Air in the mixed dough, of its volume. From memory; a published 145 mL for the dough of 100 g of flour leaves
/// some 4 %.</param>
/// <param name="SetTemperature">Here the walls of a dough without sugar and fat stop stretching: 68 °C to 80 °C, H. McGee, On Food and
/// Cooking (2004). Both raise it: see <see cref="SettingTemperature"/>.</param>
/// <param name="PowderShare">Available carbon dioxide of baking powder: see <see cref="BakingPowder.UsualShare"/>.</param>
/// <param name="PowderBenchShare">What baking powder gives before the oven: see <see cref="PowderRelease"/>.</param>
/// <param name="Yeast">The yeast's model.</param>
/// <param name="Rise">The yardstick: how many times its gas-free volume a piece should become.</param>
/// <param name="DoneTemperature">The middle of the piece at the end of baking: 93 °C (200 °F), A. Gardiner and S. Wilson, The Inquisitive
/// Cook, 1998.</param>
/// <param name="BoilAtShareOfFirstBake">In a steam-raised shell the outer layer boils after this share of the first oven stage. An
/// assumption, no source.</param>
public sealed record GasBudgetSettings(
    Band<double> AirShare,
    Band<Temperature> SetTemperature,
    Band<double> PowderShare,
    Band<double> PowderBenchShare,
    YeastGasModel Yeast,
    double Rise,
    Temperature DoneTemperature,
    double BoilAtShareOfFirstBake
)
{
    /// <summary>How the dough holds its gas; null to choose by the formula, see <see cref="GasHolding.For"/>.</summary>
    public GasHolding? Holding { get; init; }

    /// <summary>The values described beside each setting.</summary>
    public static GasBudgetSettings Default { get; } =
        new(
            new(0.04, 0.08, 0.12),
            new(Temperature.FromCelsius(68), Temperature.FromCelsius(74), Temperature.FromCelsius(80)),
            BakingPowder.UsualShare,
            PowderRelease.DoubleActing.BenchShare,
            YeastGasModel.Default,
            3,
            Temperature.FromCelsius(93),
            0.5
        );
}
