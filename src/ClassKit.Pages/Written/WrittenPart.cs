using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Texts;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Written;

/// <summary>A question that is answered in own words, with what everybody wrote.</summary>
/// <param name="Label">Its number and letter: 2a.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Part">The part.</param>
/// <param name="Answers">The answers, in the order of the class.</param>
/// <param name="Without">Who handed in a workbook and wrote nothing there.</param>
internal sealed record WrittenPart(
    string Label,
    Exercise Exercise,
    Part Part,
    IReadOnlyList<WrittenAnswer> Answers,
    IReadOnlyList<string> Without
)
{
    /// <summary>What its heading is called.</summary>
    public string Anchor => $"words-{Exercise.Id}-{Part.Id}";

    /// <summary>
    /// What the student was dealt in this exercise, without which nobody can judge an answer that speaks of it; nothing where the numbers
    /// change no answer.
    /// </summary>
    public string NumbersOf(Student who) => Numbers.GetValueOrDefault(who.Id, "");

    /// <summary>The numbers dealt as text, by student id.</summary>
    public required IReadOnlyDictionary<string, string> Numbers { get; init; }

    /// <summary>Every such question that somebody answered, in workbook order.</summary>
    public static IReadOnlyList<WrittenPart> Of(ClassGrades grades)
    {
        var answers = WrittenAnswer.In(grades).ToLookup(one => (one.Answer.Exercise.Id, one.Answer.Part.Id));
        return
        [
            .. grades
                .Dealt.Exercises.Index()
                .SelectMany(exercise =>
                    exercise
                        .Item.Parts.Index()
                        .Where(part => answers.Contains((exercise.Item.Id, part.Item.Id)))
                        .Select(part => new WrittenPart(
                            $"{exercise.Index + 1}{Phrases.Letter(part.Index)}",
                            exercise.Item,
                            part.Item,
                            [.. answers[(exercise.Item.Id, part.Item.Id)]],
                            Blank(grades, exercise.Item, part.Item)
                        )
                        {
                            Numbers = exercise.Item.HasOneAnswer() ? new Dictionary<string, string>() : NumbersOf(grades, exercise.Item),
                        })
                ),
        ];
    }

    private static Dictionary<string, string> NumbersOf(ClassGrades grades, Exercise exercise) =>
        grades
            .Dealt.Students.Where(seat => seat.Has(exercise.Id))
            .ToDictionary(
                seat => seat.Who.Id,
                seat =>
                    string.Join(
                        " · ",
                        exercise.Givens.Select(given => $"{given.Label} {GivenText.Of(given, seat.GivensOf(exercise.Id)[given.Id])}")
                    )
            );

    private static IReadOnlyList<string> Blank(ClassGrades grades, Exercise exercise, Part part) =>
        [
            .. grades
                .Students.Where(student =>
                    student.Answers.Any(answer =>
                        answer.Exercise.Id == exercise.Id && answer.Part.Id == part.Id && answer.Outcome == Outcome.Blank
                    )
                )
                .Select(student => student.Who.Shown),
        ];
}
