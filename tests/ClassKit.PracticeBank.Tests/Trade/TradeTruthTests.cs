using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.PracticeBank.Tests.Bank;
using ClassKit.Tests.Exercises;

namespace ClassKit.PracticeBank.Tests.Trade;

/// <summary>What a master baker's reading of the exercises found, as rules over all that ship.</summary>
public sealed partial class TradeTruthTests
{
    /// <summary>
    /// A loss is weighed on a bench that is itself good to some per cent: nobody can be held to a part in a thousand of it.
    /// </summary>
    private const double FinestAfterALoss = 0.002;

    /// <summary>Nearer than this to a constant that is given, a number of one's own is that constant in another guise.</summary>
    private const double Near = 0.05;

    /// <summary>Powers of ten: three is a slip of a unit, and the reach of steam over water.</summary>
    private const double FarthestOff = 4;

    public static TheoryData<string> Ids => [.. ShippedExercises.All.Select(exercise => exercise.Id)];

    /// <summary>
    /// From a freezer at -18 °C some 8 % less ice does the same: heat of ice 2.1 kJ/(kg K), CRC Handbook of Chemistry and Physics.
    /// </summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Ice_is_either_melting_or_has_its_temperature_among_the_givens(string id)
    {
        var exercise = Of(id);
        if (!Ice().IsMatch(exercise.Problem.Written))
            return;
        var isGiven = exercise.Givens.Any(given => Ice().IsMatch(given.Label) && given.Unit.Sign is "°C" && given.To < 0);
        Assert.True(isGiven || Melting().IsMatch(exercise.Problem.Written), $"{id} has ice and does not say how cold it is.");
        Assert.True(
            isGiven || !exercise.Problem.Written.Contains("freezer", StringComparison.OrdinalIgnoreCase),
            $"{id} takes ice from a freezer and counts it as melting."
        );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_dough_listed_with_its_salt_and_water_has_what_makes_it_rise_or_is_called_flat(string id)
    {
        var exercise = Of(id);
        if (
            Has(exercise, "Salt") && Has(exercise, "Water")
            || exercise.Problem.Written.Contains("poolish", StringComparison.OrdinalIgnoreCase) && Has(exercise, "Flour")
        )
            Assert.Matches(Rises(), exercise.Problem.Written);

        static bool Has(Exercise exercise, string what) =>
            exercise.Givens.Any(given => given.Label.StartsWith(what, StringComparison.Ordinal) && (given.Unit.Sign is "g" or "%"));
    }

    /// <summary>In dough, batter and cream bubbles are wet and the water holds gas: Boyle's law alone is not what happens there.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void A_gas_under_two_pressures_comes_with_its_vapour_or_with_what_the_water_holds(string id)
    {
        var exercise = Of(id);
        if (exercise.Givens.Count(given => given.Unit.Sign is "kPa" or "hPa" or "Pa") > 1)
            Assert.Contains(exercise.Givens, given =>
                given.Label.Contains("apour", StringComparison.Ordinal) || given.Label.StartsWith("Gas in each", StringComparison.Ordinal)
            );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void What_follows_from_a_loss_need_not_be_more_exact_than_a_loss_is_known(string id)
    {
        var exercise = Of(id);
        var losses = exercise
            .Givens.Where(given => given.Unit.Sign is "%" && Loss().IsMatch(given.Label))
            .Select(given => given.Id)
            .ToHashSet();
        foreach (var variant in Variants.Draw(exercise, 20))
        foreach (var part in exercise.Parts.Where(part => part.Key.Names.Any(losses.Contains) && part.Tolerance.Amount > 0))
            Assert.True(
                part.Tolerance.Around(variant.Answers[part.Id]) >= FinestAfterALoss * Math.Abs(variant.Answers[part.Id]),
                $"{id}/{part.Id}: {part.Tolerance} of {variant.Answers[part.Id]}"
            );
    }

    /// <summary>Nobody types 28 where 28.35 is given.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void No_wrong_turn_puts_a_number_of_its_own_beside_the_constant_that_is_given(string id)
    {
        var exercise = Of(id);
        foreach (var part in exercise.Parts.Where(part => part.IsNumber))
        foreach (var misconception in part.Misconceptions)
        foreach (Match typed in Number().Matches(misconception.Formula.Text))
        foreach (var given in exercise.Givens.Where(given => given.IsConstant && given.From != 0 && part.Key.Names.Contains(given.Id)))
            Assert.False(
                Math.Abs(double.Parse(typed.Value, System.Globalization.CultureInfo.InvariantCulture) / (double)given.From - 1)
                    is > 0
                        and < Near,
                $"{id}/{part.Id}/{misconception.Id} types {typed.Value} where {given.From} is given."
            );
    }

    /// <summary>
    /// Half a gram of dough for six dozen rolls is no answer that anybody leaves standing; a fraction turned round may look as odd, and
    /// people do it.
    /// </summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void No_wrong_turn_comes_to_a_number_that_nobody_would_leave_standing(string id)
    {
        var exercise = Of(id);
        foreach (var variant in Variants.Draw(exercise, 20))
        foreach (var part in exercise.Parts)
        foreach (var misconception in part.Misconceptions.Where(misconception => misconception.Id != "upside_down"))
            Assert.True(
                KeyValues.Number(misconception.Formula, KeyValues.Names(variant.Givens, variant.Answers)) is not { } wrong
                    || wrong == 0
                    || Math.Abs(Math.Log10(Math.Abs(wrong / variant.Answers[part.Id]))) <= FarthestOff,
                $"{id}/{part.Id}/{misconception.Id}"
            );
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_slip_between_spoons_is_threefold_and_no_share_of_a_share_is_told(string id)
    {
        foreach (var text in WordsOf(Of(id)))
        {
            foreach (Match slip in Spoons().Matches(text))
                Assert.Equal("Three", slip.Groups["times"].Value, ignoreCase: true);
            Assert.DoesNotMatch(ShareOfAShare(), text);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_source_is_in_print_and_no_address_of_the_web(string id) => Assert.DoesNotMatch(Address(), Of(id).Source);

    private static Exercise Of(string id) => ShippedExercises.All.Single(exercise => exercise.Id == id);

    private static IEnumerable<string> WordsOf(Exercise exercise) =>
        [
            exercise.Problem.Written,
            .. exercise.Hints,
            .. exercise.Steps.Select(step => step.What),
            .. exercise.Parts.Select(part => part.Ask),
            .. exercise.Parts.SelectMany(part => part.Misconceptions).Select(misconception => misconception.Words),
            .. exercise
                .Parts.Select(part => part.Choice)
                .OfType<Choice>()
                .SelectMany(choice => choice.From.Options.Select(option => option.Words).Append(choice.Why)),
        ];

    [GeneratedRegex(@"\b(as )?ice\b", RegexOptions.IgnoreCase)]
    private static partial Regex Ice();

    [GeneratedRegex(@"ice\s+machine's\s+bin|bin\s+of\s+an\s+ice\s+machine", RegexOptions.IgnoreCase)]
    private static partial Regex Melting();

    [GeneratedRegex("yeast|starter|levain|powder|soda|popover|flatbread", RegexOptions.IgnoreCase)]
    private static partial Regex Rises();

    [GeneratedRegex(@"\b(los[ts]|loss|left on|unsold|heels|trim)", RegexOptions.IgnoreCase)]
    private static partial Regex Loss();

    [GeneratedRegex(@"(?<![\w.])[0-9]+(\.[0-9]+)?(?![\w.])")]
    private static partial Regex Number();

    [GeneratedRegex(@"\b(?<times>\w+)\s+times\s+that\s+would\s+be\s+a\s+slip\s+of\s+the\s+spoon", RegexOptions.IgnoreCase)]
    private static partial Regex Spoons();

    [GeneratedRegex(@"\b(half|third|quarter|fifth|tenth) of a (half|third|quarter|fifth|tenth)\b", RegexOptions.IgnoreCase)]
    private static partial Regex ShareOfAShare();

    [GeneratedRegex(@"\b[a-z0-9-]+\.(com|org|net|us|edu|gov|de|co\.uk|info)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Address();
}
