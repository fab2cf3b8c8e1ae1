namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>The oracle of every exercise, by its id.</summary>
internal static class BankOracles
{
    public static IReadOnlyDictionary<string, Oracle> All { get; } =
        new[]
        {
            BakersPercentageOracle.Exercises,
            ScalingOracle.Exercises,
            DoughTemperatureOracle.Exercises,
            YeastOracle.Exercises,
            ChemicalLeaveningOracle.Exercises,
            SteamOracle.Exercises,
            UnitsOracle.Exercises,
            CostOracle.Exercises,
            ChoiceOracle.Exercises,
        }
            .SelectMany(skill => skill)
            .ToDictionary(oracle => oracle.Key, oracle => oracle.Value);
}
