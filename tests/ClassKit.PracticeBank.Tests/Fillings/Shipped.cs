using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading;
using ClassKit.PracticeBank.Tests.Bank;
using ClassKit.Tests.Exercises;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Returned;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// Every exercise that ships, dealt to a few students, with several seeds where everything is tried, to be filled in every way there is.
/// </summary>
internal static class Shipped
{
    public static MarkingScheme Marking { get; } = new("marks", "Marks", 0.4m, 1, 0, 0.6m) { RoundingSlipShare = 0.6m };

    public static IReadOnlyList<Exercise> Exercises { get; } =
    [.. ShippedExercises.Below(Repository.PathOf("lessons", "one-tin-three-lifts", "exercises")), .. ShippedBank.Exercises];

    private static readonly Lazy<IReadOnlyList<Seat>> FirstDeal = new(() => [.. Deal(3, 2)]);

    private static readonly Lazy<IReadOnlyList<Seat>> SecondDeal = new(() => [.. Deal(41, 2)]);

    /// <summary>Seats of two deals, for shares that few would not tell.</summary>
    public static IReadOnlyList<Seat> SeatsOfTwo => [.. FirstDeal.Value, .. SecondDeal.Value];

    /// <summary>
    /// Seats of one deal, or of several where everything is tried: the class, the student and the workbook as it was dealt.
    /// </summary>
    public static IReadOnlyList<Seat> Seats => Trials.All ? SeatsOfTwo : FirstDeal.Value;

    /// <summary>Seats of one deal to more students, to be held against each other.</summary>
    public static IReadOnlyList<Seat> WholeClass { get; } = [.. Deal(7, 8)];

    private static IEnumerable<Seat> Deal(ulong seed, int students)
    {
        var roster = new Roster(
            "Invented",
            [.. Enumerable.Range(0, students).Select(number => new Student($"s-{number}", $"Student {number}"))]
        );
        var dealt = Dealer.Deal("all", "All", Exercises, Marking, roster, seed).Class!;
        var grader = new ClassGrader(dealt);
        return dealt.Students.Select(student => new Seat(
            dealt,
            grader,
            student,
            ReturnedWorkbookReader.Read(DealtWorkbookWriter.Write(dealt, student)).Workbook!
        ));
    }
}
