using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Summaries;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>A class in which students share wrong methods that nobody listed. Who used which is known, because it was written so.</summary>
public sealed class WrongMethodsTests
{
    /// <summary>A method far from the key, written in three ways; one near it; and what nobody else wrote.</summary>
    private static readonly Dictionary<int, string> Written = new()
    {
        [0] = "=want*flour/room+tap",
        [1] = "=tap+flour*want/room",
        [2] = "=(want/room)*flour+tap*1",
        [4] = "=(3*want-flour-room-friction)/2",
        [5] = "=(3*want-(flour+room+friction))*50%",
        [7] = "=want*want/room+friction",
    };

    private static readonly DealtClass Class = Dealer
        .Deal(
            "lesson",
            "Lesson",
            [DoughTemperatureExercise.Exercise],
            DoughTemperatureExercise.Marking,
            new("Class", [.. Enumerable.Range(0, 10).Select(number => new Student($"s-{number}", $"Student {number}"))]),
            11
        )
        .Class!;

    private static readonly IReadOnlyList<WrongMethod> Found = Of(WrongMethods.Fewest);

    private static IReadOnlyList<WrongMethod> Of(int fewest) =>
        WrongMethods.In(
            ClassGrader.Grade(Class, Class.Students.Select((seat, number) => Filled(seat, number).As($"{seat.Who.Id}.xlsx"))),
            fewest
        );

    private static ReturnedBook Filled(DealtStudent seat, int number)
    {
        var book = new ReturnedBook(seat);
        var key = DoughTemperatureExercise.Exercise.Parts.Single(part => part.Id == "temperature");
        book.Answer("sum", DoughTemperatureExercise.Exercise.Parts[0].Key.Text);
        var givens = seat.GivensOf(DoughTemperatureExercise.Id);
        // The fourth and the seventh student worked it out with a calculator.
        return number switch
        {
            3 => book.Answer(
                key.Id,
                Math.Round((double)(givens["want"] * givens["flour"] / givens["room"] + givens["tap"]), 2, MidpointRounding.AwayFromZero)
            ),
            _ => book.Answer(key.Id, Written.GetValueOrDefault(number, key.Key.Text)),
        };
    }

    [Fact]
    public void Every_shared_method_is_found_and_nobody_is_in_the_wrong_group() =>
        Assert.Equal(
            [
                ["s-0", "s-1", "s-2", "s-3"],
                ["s-4", "s-5"],
            ],
            Found.Select(method => method.Students.Select(student => student.Id).Order().ToArray())
        );

    [Fact]
    public void A_group_near_the_key_says_what_it_has_otherwise_and_one_far_from_it_says_nothing() =>
        Assert.Equal([true, false], Found.Select(method => method.Edits.Count == 0));

    /// <summary>
    /// Everybody's numbers are put into everybody's formula: one that is made to be much work is held against nobody's, whatever it gives.
    /// </summary>
    [Theory]
    [InlineData(9, 1)]
    [InlineData(9000, 0)]
    public void A_formula_that_is_much_work_is_in_no_group(int values, int groups) =>
        Assert.Equal(
            groups,
            WrongMethods
                .In(ClassGrader.Grade(Class, Class.Students.Take(2).Select(seat => Slow(seat, values).As($"{seat.Who.Id}.xlsx"))))
                .Count
        );

    private static ReturnedBook Slow(DealtStudent seat, int values)
    {
        var book = new ReturnedBook(seat);
        book.Answer("sum", DoughTemperatureExercise.Exercise.Parts[0].Key.Text);
        return book.Answer(
            "temperature",
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"=want*flour/room+tap+0*SUM(SEQUENCE({values}))")
        );
    }

    [Fact]
    public void Groups_that_might_tell_who_is_meant_stay_out() => Assert.Empty(Of(WrongMethods.FewestWithoutNames));
}
