using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Lettering;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// Every part that is answered by choosing, of every exercise that ships, filled in every way that a hand may type a letter. Nothing here
/// asks the grader what is right.
/// </summary>
public sealed class ChoiceFillingTests
{
    /// <summary>{0} is the letter, {1} the letter in lower case, {2} the option's words.</summary>
    private static readonly string[] Dresses =
    [
        "{0}",
        "{1}",
        "{1})",
        "({0})",
        "{0}.",
        " {0} ",
        "{0}:",
        "[{1}]",
        "\"{0}\"",
        "Option {0}",
        "answer {1}",
        "={3}",
        "{2}",
        "{0}   {2}",
        "{1}) {2}",
        "{4}",
        "{5}",
    ];

    /// <summary>What names no option: nothing is guessed.</summary>
    private static readonly object[] Unreadable =
    [
        "see my notes",
        "A or B",
        "A, B",
        "AB",
        "Z",
        "?",
        1.0,
        2.0,
        true,
        "the second one",
        "a guess",
        "1",
    ];

    /// <summary>What names one letter among words: whether it is meant, only a reader can tell.</summary>
    private static readonly string[] ForTheReader =
    [
        "not A",
        "B because it is warm",
        "I think A",
        "B/B",
        "AA",
        "В, it rises",
        "a guess: B",
    ];

    public static TheoryData<string> DressNames => [.. Dresses];

    [Fact]
    public void There_are_at_least_twelve_exercises_over_all_eight_skills_and_three_kinds()
    {
        var choosing = Shipped.Exercises.Where(exercise => exercise.Parts.Any(part => part.Choice is not null)).ToList();

        Assert.InRange(choosing.Count, 12, int.MaxValue);
        Assert.Equal(
            Shipped.Exercises.Select(exercise => exercise.Skill).Distinct().Order(StringComparer.Ordinal),
            choosing.Select(exercise => exercise.Skill).Distinct().Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            [ChoiceKind.Choose, ChoiceKind.Match, ChoiceKind.Order],
            choosing.SelectMany(exercise => exercise.Parts).Select(part => part.Choice?.From.Kind).OfType<ChoiceKind>().Distinct().Order()
        );
    }

    [Theory]
    [MemberData(nameof(DressNames))]
    public void The_right_option_earns_all_however_it_is_typed(string dress) =>
        Hold(dress, 0, (grade, _) =>
            grade.Outcome == Outcome.ValueOnly
            && grade.Points == grade.Part.Points
            && grade.Chosen == grade.Part.Choice!.From.Find(grade.Expected)
            && grade.Findings is [AnswerFinding.RightTyped]
        );

    /// <summary>Also where its words are typed: what a student meant must not hang on how.</summary>
    [Theory]
    [MemberData(nameof(DressNames))]
    public void Every_wrong_option_earns_nothing_and_is_told_what_its_author_wrote(string dress)
    {
        foreach (var away in Trials.Some(Enumerable.Range(1, OptionList.Most - 1), 3, Trials.Beginning(dress)))
        {
            Hold(dress, away, (grade, desk) =>
            {
                var chosen = grade.Part.Choice!.From.NumberOf(grade.Chosen?.Id ?? "");
                if (chosen == grade.Expected)
                    return grade.Outcome == Outcome.ValueOnly;
                var known = grade.Part.Misconceptions.FirstOrDefault(wrong =>
                    KeyValues.Number(wrong.Formula, KeyValues.Names(desk.Givens, desk.Right)) == chosen
                );
                return chosen is not null
                    && grade.Points == 0
                    && grade.Misconception == known
                    && grade.Outcome == (known is null ? Outcome.Incorrect : Outcome.Misconception);
            });
        }
    }

    [Fact]
    public void What_names_no_option_or_two_is_unreadable_and_counts_as_no_other()
    {
        foreach (var filling in Unreadable)
        {
            foreach (
                var grade in Shipped
                    .Seats.SelectMany(seat => seat.Grade((_, part) => part.Choice is null ? null : filling))
                    .Where(grade => grade.Part.Choice is not null)
            )
                Assert.True(
                    grade is { Outcome: Outcome.Unreadable, Points: 0, Chosen: null, Findings: [AnswerFinding.NoOption] },
                    $"{grade.Exercise.Id}.{grade.Part.Id}: {filling} is {grade.Outcome} {grade.Chosen}"
                );
        }
    }

    [Fact]
    public void One_letter_among_words_is_left_to_the_instructor_and_costs_nothing_before()
    {
        foreach (var filling in ForTheReader)
        {
            foreach (
                var grade in Shipped
                    .Seats.SelectMany(seat => seat.Grade((_, part) => part.Choice is null ? null : filling))
                    .Where(grade => grade.Part.Choice is not null)
            )
                Assert.True(
                    grade
                        is {
                            Outcome: Outcome.Unsupported,
                            IsUndecided: true,
                            OutOf: 0,
                            Chosen: null,
                            Findings: [AnswerFinding.OptionInWords]
                        },
                    $"{grade.Exercise.Id}.{grade.Part.Id}: {filling} is {grade.Outcome} {grade.Chosen}"
                );
        }
    }

    [Fact]
    public void Nothing_and_an_error_are_what_they_are()
    {
        foreach (var grade in Shipped.Seats.SelectMany(seat => seat.Grade((_, _) => null)).Where(grade => grade.Part.Choice is not null))
            Assert.Equal((Outcome.Blank, 0m), (grade.Outcome, grade.Points));
        foreach (
            var grade in Shipped
                .Seats.SelectMany(seat => seat.Grade((_, part) => part.Choice is null ? null : "=1/0"))
                .Where(grade => grade.Part.Choice is not null)
        )
            Assert.Equal((Outcome.Incorrect, 0m), (grade.Outcome, grade.Points));
    }

    /// <summary>The instructor's word stands over a letter as over a number; what was chosen stays on record.</summary>
    [Fact]
    public void Points_that_an_instructor_gives_for_a_wrong_letter_stand()
    {
        var seat = Shipped.Seats[0];
        var answers = seat.Grade(
            (desk, part) =>
                part.Choice is { From: var list } ? Dressed("{0}", desk, list, ((int)desk.Right[part.Id] % list.Options.Count) + 1) : null
        );
        var wrong = answers.First(answer => answer is { Part.Choice: not null, Points: 0, Chosen: not null });
        var grades = new ClassGrades(seat.Dealt, [new(seat.Student.Who, GradeStatus.Graded, "s.xlsx", answers, [])], []);

        var after = Corrector
            .Apply(grades, [new(seat.Student.Who.Id, wrong.Exercise.Id, wrong.Part.Id, 0.5m, "Argued for.")])
            .Students[0]
            .Answers.Single(answer => answer.Exercise == wrong.Exercise && answer.Part == wrong.Part);

        Assert.Equal((0.5m, wrong.Part.Points, wrong.Outcome, wrong.Chosen), (after.Points, after.OutOf, after.Outcome, after.Chosen));
        Assert.Equal(new AppliedCorrection(0, "Argued for."), after.Correction);
    }

    /// <summary>A neighbour's letter says nothing where the options stand in another order.</summary>
    [Fact]
    public void Students_of_one_class_have_their_options_in_several_orders()
    {
        foreach (var exercise in Shipped.Exercises)
        {
            foreach (var list in exercise.Parts.Select(part => part.Choice?.From).OfType<OptionList>().DistinctBy(list => list.Id))
            {
                var orders = Shipped
                    .WholeClass.Select(seat =>
                        string.Join(
                            ' ',
                            LetteredOptions.Of(exercise, list, seat.Student.GivensOf(exercise.Id)).InOrder.Select(option => option.Id)
                        )
                    )
                    .Distinct()
                    .Count();
                Assert.True(orders > 2, $"{exercise.Id}/{list.Id}: {orders} orders in a class of {Shipped.WholeClass.Count}");
            }
        }
    }

    private static void Hold(string dress, int away, Func<AnswerGrade, Desk, bool> isAsMade)
    {
        foreach (var seat in Shipped.Seats)
        {
            var desks = new Dictionary<string, Desk>();
            var grades = seat.Grade(
                (desk, part) =>
                {
                    desks[desk.Exercise.Id] = desk;
                    return part.Choice is { From: var list }
                        ? Dressed(dress, desk, list, (((int)desk.Right[part.Id] - 1 + away) % list.Options.Count) + 1)
                        : null;
                }
            );
            foreach (var grade in grades.Where(grade => grade.Part.Choice is not null))
                Assert.True(
                    isAsMade(grade, desks[grade.Exercise.Id]),
                    $"{grade.Exercise.Id}.{grade.Part.Id}: {grade.Value} for {grade.Expected} is {grade.Outcome} {grade.Misconception?.Id} {grade.Chosen} with {grade.Points}: {string.Join(", ", grade.Findings)}"
                );
        }
    }

    private static string Dressed(string dress, Desk desk, OptionList list, int number)
    {
        var option = list.Find(number)!;
        var letter = LetteredOptions.Of(desk.Exercise, list, desk.Givens).LetterOf(option);
        // An equals sign before a letter in quotes is a formula; full-width letters are typed on East Asian keyboards, and letters that
        // only look alike on Cyrillic ones.
        return dress
            .Replace("{0}", letter, StringComparison.Ordinal)
            .Replace("{1}", letter.ToLowerInvariant(), StringComparison.Ordinal)
            .Replace("{2}", option.Words, StringComparison.Ordinal)
            .Replace("{3}", $"\"{letter}\"", StringComparison.Ordinal)
            .Replace("{4}", ((char)(letter[0] + 0xFEE0)).ToString(), StringComparison.Ordinal)
            .Replace("{5}", Cyrillic(letter), StringComparison.Ordinal);
    }

    /// <summary>The letter that looks the same (Unicode Technical Standard 39); the letter itself where there is none.</summary>
    private static string Cyrillic(string letter) =>
        letter switch
        {
            "A" => "\u0410",
            "B" => "\u0412",
            "C" => "\u0421",
            "E" => "\u0415",
            "H" => "\u041D",
            _ => letter,
        };
}
