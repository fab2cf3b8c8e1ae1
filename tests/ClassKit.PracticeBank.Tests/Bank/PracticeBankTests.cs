using System.Text.RegularExpressions;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;

namespace ClassKit.PracticeBank.Tests.Bank;

/// <summary>What the bank as a whole promises an instructor.</summary>
public sealed partial class PracticeBankTests
{
    private static readonly string[] Skills =
    [
        "baker's percentage",
        "scaling and yield",
        "dough temperature",
        "yeast",
        "chemical leavening",
        "steam and expansion",
        "units and measures",
        "cost",
    ];

    public static TheoryData<string> Ids => ShippedBank.Ids;

    [Fact]
    public void There_are_more_than_thirty_and_every_skill_has_all_three_levels()
    {
        Assert.True(ShippedBank.Exercises.Count > 30);
        Assert.All(Skills, skill =>
            Assert.Equal(
                [ExerciseLevel.Guided, ExerciseLevel.Standard, ExerciseLevel.Open],
                ShippedBank.Exercises.Where(exercise => exercise.Skill == skill).Select(exercise => exercise.Level).Distinct().Order()
            )
        );
    }

    [Fact]
    public void Ids_and_titles_are_unique()
    {
        Assert.Distinct(ShippedBank.Exercises.Select(exercise => exercise.Id));
        Assert.Distinct(ShippedBank.Exercises.Select(exercise => exercise.Title));
    }

    /// <summary>From a millionth downwards the judge takes a difference for the noise of working something out: nothing that is given or
    /// asked comes near.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Nothing_that_is_given_or_asked_is_so_small_that_its_digits_are_noise(string id) =>
        Assert.All(
            Variants
                .Draw(ShippedBank.Of(id), 20)
                .SelectMany(variant => variant.Givens.Values.Select(given => (double)given).Concat(variant.Answers.Values)),
            number => Assert.True(number == 0 || Math.Abs(number) >= 1e-4, $"{number}")
        );

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_exercise_names_a_skill_of_the_bank_and_knows_several_wrong_turns_and_hints(string id)
    {
        var exercise = ShippedBank.Of(id);

        Assert.Contains(exercise.Skill, Skills);
        Assert.InRange(exercise.Parts.Count, 1, 5);
        Assert.All(exercise.Parts.Where(part => part.InWords is null), part => Assert.NotEmpty(part.Misconceptions));
        Assert.InRange(exercise.Parts.Sum(part => part.Misconceptions.Count), 3, 12);
        Assert.NotEmpty(exercise.Hints);
        // Open: the student plans the steps. Guided: they are asked one by one.
        if (exercise.Level == ExerciseLevel.Open)
            Assert.InRange(exercise.Parts.Count, 1, 2);
        if (exercise.Level == ExerciseLevel.Guided)
            Assert.InRange(exercise.Parts.Count, 3, 5);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_given_that_the_text_does_not_tell_stands_in_the_table_and_every_drawn_one_matters(string id)
    {
        var exercise = ShippedBank.Of(id);
        var used = exercise
            .Parts.SelectMany(part => part.Key.Names.Concat(part.Misconceptions.SelectMany(misconception => misconception.Formula.Names)))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);

        // What only sets the scene of a choice gives each student another order of its options.
        if (exercise.Parts.Any(part => part.IsNumber))
            Assert.All(exercise.Givens, given => Assert.Contains(given.Id, used));
        Assert.All(exercise.Givens, given => Assert.Contains($"{{{given.Id}}}", exercise.Problem.Written, StringComparison.Ordinal));
    }

    /// <summary>Fresh inputs tell a method from a number only where the number changes.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_part_hangs_on_a_given_that_is_drawn(string id)
    {
        var exercise = ShippedBank.Of(id);
        var drawn = exercise.Givens.Where(given => !given.IsConstant).Select(given => given.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var part in exercise.Parts.Where(part => part.IsNumber))
        {
            Assert.True(part.Key.Names.Any(drawn.Contains), $"{id}/{part.Id} has the same answer for everybody.");
            drawn.Add(part.Id);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_text_reads_on_with_its_numbers_in_it(string id)
    {
        var exercise = ShippedBank.Of(id);
        var text = ProblemText.Fill(exercise, Variants.Draw(exercise, 1).Single().Givens);

        Assert.DoesNotContain('{', text);
        // As "80 rolls rolls" would, with a unit of the given's and the same word in the text.
        Assert.False(DoubledWord().IsMatch(text), text);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_wrong_turn_is_taken_for_the_right_one_or_for_another(string id)
    {
        var exercise = ShippedBank.Of(id);
        foreach (var variant in Variants.Draw(exercise, 200))
        {
            var names = KeyValues.Names(variant.Givens, variant.Answers);
            foreach (var part in exercise.Parts)
            {
                var values = part
                    .Misconceptions.Select(misconception => KeyValues.Number(misconception.Formula, names))
                    .Where(value => value is not null || part.IsNumber)
                    .Select(value => value!.Value)
                    .Prepend(variant.Answers[part.Id])
                    .ToList();
                for (var one = 0; one < values.Count; one++)
                {
                    for (var other = one + 1; other < values.Count; other++)
                    {
                        Assert.True(
                            Math.Abs(values[one] - values[other])
                                > part.Tolerance.Around(values[one]) + part.Tolerance.Around(values[other]),
                            $"{id}/{part.Id}: {values[one]} and {values[other]} at {VariantKey.Of(exercise, variant.Givens)}"
                        );
                    }
                }
            }
        }
    }

    [GeneratedRegex(@"\b(\w+)\s+\1\b", RegexOptions.IgnoreCase)]
    private static partial Regex DoubledWord();
}
