using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Grading;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// The same work earns the same mark whatever numbers a student was dealt, over everything that ships: 168 students handed in one
/// follow-through and 24 of them had nothing for it, because the right number happened to be one of the sheet's.
/// </summary>
public sealed class OneMarkTests(ITestOutputHelper output)
{
    /// <summary>A near miss is worth something, or nothing would be seen of what is paid for one.</summary>
    private static readonly Lazy<IReadOnlyList<Seat>> Class = new(() =>
    {
        var dealt = Shipped.WholeClass[0].Dealt with { Marking = Shipped.Marking with { NearMissShare = 0.2m, MisconceptionShare = 0.1m } };
        var grader = new ClassGrader(dealt);
        return [.. Shipped.WholeClass.Select(seat => seat with { Dealt = dealt, Grader = grader })];
    });

    /// <summary>An ordinary run tries one exercise in so many: whole workbooks are graded for every cell that is pointed at.</summary>
    private const int Share = 16;

    private static IEnumerable<(Exercise Exercise, Part Part)> Parts =>
        Shipped.Exercises.SelectMany(exercise => exercise.Parts.Where(part => part.IsNumber).Select(part => (exercise, part)));

    private static IEnumerable<(Exercise Exercise, Part Part)> SomeParts => Parts.Where(at => Tried.Value.Contains(at.Exercise));

    private static readonly Lazy<HashSet<Exercise>> Tried = new(() =>
        [.. Trials.Some(Shipped.Exercises, Share, Trials.Beginning(nameof(OneMarkTests)))]
    );

    /// <summary>Whoever points at one cell has no method, and a fifth of the points nearly everywhere was no near miss.</summary>
    [Fact]
    public void A_cell_pointed_at_earns_the_same_whatever_is_dealt_and_nothing_where_the_key_does_more_with_it()
    {
        var (tried, paid) = (0, 0);
        List<string> uneven = [];
        foreach (var (exercise, part) in SomeParts)
        {
            foreach (var name in Names(exercise, part))
            {
                var grades = Grades(exercise, (desk, other) => "=" + (other == part ? desk.Cell(name).Cell : desk.Cells(other)), part);
                // Where the numbers dealt make a copy right, it is right: drawing takes care that they hardly ever do.
                List<AnswerGrade> wrong = [.. grades.Where(grade => grade.Outcome is Outcome.Incorrect or Outcome.Misconception)];
                tried += wrong.Count;
                paid += wrong.Count(grade => grade.Points > 0);
                if (wrong.Select(grade => grade.Points).Distinct().Count() > 1)
                    uneven.Add($"{exercise.Id}.{part.Id} {part.Key} ={name}: {Shown(wrong)}");
                if (Operations(part.Key.Shape) > 2 && wrong.Exists(grade => grade is { Points: > 0, Outcome: Outcome.Incorrect }))
                    uneven.Add($"{exercise.Id}.{part.Id} {part.Key} ={name} earns: {Shown(wrong)}");
            }
        }
        output.WriteLine($"{tried} cells pointed at, {paid} paid");
        Assert.True(tried > Trials.Of(1000, 2 * Share), $"Only {tried}.");
        Assert.True(uneven.Count == 0, string.Join('\n', uneven.Take(20)));
    }

    [Fact]
    public void What_the_key_rounds_and_a_student_does_not_earns_the_same_whatever_is_dealt()
    {
        var tried = 0;
        List<string> uneven = [];
        foreach (var (exercise, part) in Parts.Where(at => KeyRounding.Of(at.Part.Key) is not null))
        {
            var bare = CellFormula.OfTree(((CallNode)part.Key.Shape).Arguments[0]);
            var grades = Grades(exercise, (desk, other) => "=" + (other == part ? desk.Cells(bare) : desk.Cells(other)), part);
            tried += grades.Count;
            if (grades.Select(grade => (grade.Points, grade.Outcome)).Distinct().Count() > 1)
                uneven.Add($"{exercise.Id}.{part.Id} {part.Key}: {Shown(grades)}");
        }
        Assert.True(tried >= 20, $"Only {tried}.");
        Assert.True(uneven.Count == 0, string.Join('\n', uneven));
    }

    /// <summary>The earlier answer is wrong and a given's number, and what follows from it is typed to the last digit.</summary>
    [Fact]
    public void What_follows_from_a_wrong_number_that_stands_on_the_sheet_follows_through() =>
        HoldsOfTyped(
            (desk, before, part) => desk.Givens.Values.Select(given => ((double)given, Carried(desk, before, part, (double)given)))
        );

    /// <summary>The earlier answer is such that what follows from it is a given's number: half the bank has keys that allow that.</summary>
    [Fact]
    public void What_follows_from_a_wrong_number_and_happens_to_stand_on_the_sheet_follows_through() =>
        HoldsOfTyped(
            (desk, before, part) =>
                desk.Givens.Values.SelectMany(given => Leading(desk, before, part, (double)given).Select(own => (own, (double?)given)))
        );

    /// <summary>Numbers copied from the sheet into one part and the next, which have to do with each other by chance alone.</summary>
    [Fact]
    public void Who_copies_two_numbers_of_the_sheet_earns_hardly_ever_what_would_follow_through()
    {
        var (tried, paid) = (0, 0);
        // Of all exercises: nothing is graded here.
        foreach (var (exercise, before, part) in Following(Parts))
        {
            foreach (var seat in Class.Value)
            {
                var desk = DeskOf(seat, exercise);
                foreach (var one in desk.Givens.Values)
                {
                    foreach (var other in desk.Givens.Values.Where(value => value != one))
                    {
                        if (Carried(desk, before, part, (double)one) is not { } carried || IsRight(desk, before, (double)one))
                            continue;
                        if (IsRight(desk, part, (double)other))
                            continue;
                        tried++;
                        if (Math.Abs(carried - (double)other) < 1e-9)
                            paid++;
                    }
                }
            }
        }
        output.WriteLine($"{tried} pairs of copied numbers, {paid} of which follow");
        Assert.True(tried > Trials.Of(1000, 2 * Share), $"Only {tried}.");
        Assert.True(paid <= 0.01 * tried, $"{paid} of {tried}.");
    }

    private void HoldsOfTyped(Func<Desk, Part, Part, IEnumerable<(double Own, double? Carried)>> numbers)
    {
        var tried = 0;
        List<string> lost = [];
        foreach (var (exercise, before, part) in Following(SomeParts))
        {
            foreach (var seat in Class.Value)
            {
                foreach (var (own, carried) in numbers(DeskOf(seat, exercise), before, part))
                {
                    var desk = DeskOf(seat, exercise);
                    if (
                        carried is not { } number
                        || number == own
                        || !double.IsFinite(number)
                        || IsNothing(own)
                        || IsRight(desk, before, own)
                        || IsRight(desk, part, number)
                    )
                        continue;
                    var grade = seat.Grade(
                            (other, asked) =>
                                other.Exercise != exercise || !asked.IsNumber ? null
                                : asked == before ? own
                                : asked == part ? number
                                : exercise.Parts.TakeWhile(one => one != part).Contains(asked) ? "=" + other.Cells(asked)
                                : null
                        )
                        .Single(grade => grade.Exercise.Id == exercise.Id && grade.Part.Id == part.Id);
                    tried++;
                    if (
                        grade.Outcome != Outcome.FollowThrough
                        || grade.Points != Math.Round(part.Points * (part.FormulaAsked ? 0.4m : 1), 2, MidpointRounding.AwayFromZero)
                    )
                        lost.Add($"{exercise.Id}.{part.Id} {part.Key} on {before.Id} = {own}: {number} is {Shown([grade])}");
                }
            }
        }
        output.WriteLine($"{tried} typed, {lost.Count} lost");
        Assert.True(tried > Trials.Of(300, 2 * Share), $"Only {tried}.");
        Assert.True(lost.Count == 0, $"{lost.Count} of {tried}:\n{string.Join('\n', lost.Take(20))}");
    }

    /// <summary>Every part with each of the earlier ones that its key names.</summary>
    private static IEnumerable<(Exercise Exercise, Part Before, Part Part)> Following(IEnumerable<(Exercise Exercise, Part Part)> parts) =>
        from at in parts
        from before in at.Exercise.Parts.TakeWhile(other => other != at.Part)
        where before.IsNumber && at.Part.Key.Names.Contains(before.Id, StringComparer.OrdinalIgnoreCase)
        select (at.Exercise, before, at.Part);

    private static IEnumerable<string> Names(Exercise exercise, Part part) =>
        [
            .. exercise.Givens.Select(given => given.Id),
            .. exercise.Parts.TakeWhile(other => other != part).Where(other => other.IsNumber).Select(other => other.Id),
        ];

    private static List<AnswerGrade> Grades(Exercise exercise, Func<Desk, Part, object?> fill, Part part) =>
        [
            .. Class.Value.SelectMany(seat =>
                seat.Grade((desk, other) => desk.Exercise == exercise && other.IsNumber ? fill(desk, other) : null)
                    .Where(grade => grade.Exercise.Id == exercise.Id && grade.Part.Id == part.Id)
            ),
        ];

    private static Desk DeskOf(Seat seat, Exercise exercise) =>
        new(seat.Dealt.LayOut().Exercises.Single(layout => layout.Exercise.Id == exercise.Id), seat.Student);

    private static bool IsRight(Desk desk, Part part, double number) =>
        part.Tolerance.Accepts(desk.Right[part.Id], number)
        || (part.Unit.IsPercent && part.Tolerance.Accepts(desk.Right[part.Id], number / 100));

    /// <summary>0, 1, 10 and 100 are filled in, and their carrying on shows nothing.</summary>
    private static bool IsNothing(double number) => number == 0 || Math.Abs(Math.IEEERemainder(Math.Log10(Math.Abs(number)), 1)) < 1e-9;

    private static double? Carried(Desk desk, Part before, Part part, double own)
    {
        var answers = desk
            .Exercise.Parts.TakeWhile(other => other != part)
            .Where(other => other.IsNumber)
            .ToDictionary(other => other.Id, other => desk.Right[other.Id]);
        // What stands between is worked out from the wrong number.
        answers[before.Id] = own;
        foreach (var between in desk.Exercise.Parts.SkipWhile(other => other != before).Skip(1).TakeWhile(other => other != part))
        {
            if (between.IsNumber && KeyValues.Number(between.Key, KeyValues.Names(desk.Givens, answers)) is { } value)
                answers[between.Id] = value;
        }
        return KeyValues.Number(part.Key, KeyValues.Names(desk.Givens, answers));
    }

    /// <summary>The earlier answers from which a number follows, for keys that add or multiply.</summary>
    private static IEnumerable<double> Leading(Desk desk, Part before, Part part, double number)
    {
        if (Carried(desk, before, part, 2) is not { } two || Carried(desk, before, part, 3) is not { } three)
            yield break;
        double[] guesses = [2 + ((number - two) / (three - two)), 6 * (two - three) / number];
        foreach (var own in guesses.Where(double.IsFinite).Where(own => own > 0))
        {
            if (Carried(desk, before, part, own) is { } carried && Math.Abs(carried - number) <= 1e-10 * Math.Max(1, Math.Abs(number)))
                yield return own;
        }
    }

    private static int Operations(FormulaNode node) => (node is BinaryNode or CallNode ? 1 : 0) + node.Children().Sum(Operations);

    private static string Shown(IEnumerable<AnswerGrade> grades) =>
        string.Join(
            "; ",
            grades
                .GroupBy(grade => (grade.Outcome, grade.Points, Finding: grade.Findings[0].GetType().Name))
                .Select(group =>
                    $"{group.Count()} {group.Key.Outcome} {group.Key.Points} {group.Key.Finding} {group.First().Formula} {group.First().Value}"
                )
        );
}
