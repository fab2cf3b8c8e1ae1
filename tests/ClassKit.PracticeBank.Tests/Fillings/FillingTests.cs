using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.PracticeBank.Tests.Fillings;

/// <summary>
/// Every part of every exercise that ships and asks a number, filled in hundreds of ways; those that ask a letter are in
/// <see cref="ChoiceFillingTests"/>. What each deserves follows from how it was made, and nothing here asks the grader.
/// </summary>
public sealed class FillingTests
{
    /// <summary>How a sound formula can be dressed: {0} is the key.</summary>
    private static readonly string[] Dresses =
    [
        "{0}",
        "({0})",
        "(({0}))",
        "+{0}",
        "-(-({0}))",
        "({0})+0",
        "0+({0})",
        "({0})*1",
        "1*({0})",
        "({0})/1",
        "({0})^1",
        "({0})*100%",
        "({0})*100/100",
        "({0})*2/2",
        "({0})-1+1",
        "SUM({0})",
        "SUM({0},0)",
        "PRODUCT({0},1)",
        "SUMPRODUCT({0})",
        "AVERAGE({0})",
        "MAX({0})",
        "MIN({0})",
        "MEDIAN({0})",
        "N({0})",
        "ROUND({0},12)",
        "IF(TRUE,{0},0)",
        "IF(1>0,{0})",
        "IFERROR({0},0)",
        "IFERROR({0},\"?\")",
        "CHOOSE(1,{0})",
        "LET(a,{0},a)",
        "LET(a,{0},b,2,a*b/b)",
        "SUM(({0})/2,({0})/2)",
        "IF(({0})>1E9,0,{0})",
        "SUBTOTAL(9,{1})",
        "INDEX({1},1)",
        "SUM({1})",
        "{1}",
        "{1}*1",
        "SUM({1}:{1})",
        "LARGE({1}:{1},1)",
        "IFS(TRUE,{0})",
        "SWITCH(1,1,{0})",
        "POWER({0},1)",
        "VALUE(({0})&\"\")",
    ];

    private static readonly Dictionary<string, Func<Desk, Part, string>> Writings = new()
    {
        ["over cells"] = (desk, part) => desk.Cells(part),
        ["absolute"] = (desk, part) => desk.Absolute(part),
        ["across sheets"] = (desk, part) => desk.AcrossSheets(part),
        ["names"] = (desk, part) => desk.Names(part),
        ["in one go"] = (desk, part) => desk.InOneGo(part),
    };

    /// <summary>Numbers and formulas that any method, or none, would give.</summary>
    private static readonly Dictionary<string, Func<Desk, object>> Fills = new()
    {
        ["0"] = _ => 0.0,
        ["1"] = _ => 1.0,
        ["-1"] = _ => -1.0,
        ["10"] = _ => 10.0,
        ["100"] = _ => 100.0,
        ["1000"] = _ => 1000.0,
        ["text 0"] = _ => "0",
        ["=0"] = _ => "=0",
        ["=1"] = _ => "=1",
        ["first given, typed"] = desk => (double)desk.Givens[desk.Exercise.Givens[0].Id],
        ["last given, typed"] = desk => (double)desk.Givens[desk.Exercise.Givens[^1].Id],
        ["copy of the first given"] = desk => "=" + desk.FirstGiven,
        ["nothing of the first given"] = desk => $"={desk.FirstGiven}*0",
        ["first given by itself"] = desk => $"={desk.FirstGiven}/{desk.FirstGiven}",
        ["an empty cell"] = _ => "=A1000*0",
    };

    /// <summary>How the answer of an earlier part goes wrong, or says less than it should.</summary>
    private static readonly Dictionary<string, Func<Desk, Part, object?>> Spoilt = new()
    {
        ["blank"] = (_, _) => null,
        ["typed wrong"] = (desk, part) => Math.Round((desk.Right[part.Id] * 1.37) + 0.0137, 4, MidpointRounding.AwayFromZero),
        ["typed right"] = (desk, part) => desk.Right[part.Id],
        ["words"] = (_, _) => "see my notes",
        ["text with unit"] = (desk, part) => $"{desk.Right[part.Id].ToString("0.######", CultureInfo.InvariantCulture)} xx",
        ["text of a formula"] = (desk, part) => $"={desk.Cells(part)}&\" xx\"",
        ["division by zero"] = (desk, _) => $"={desk.FirstGiven}/0",
        ["breaks on others"] = (desk, part) =>
            $"=IF({desk.FirstGiven}={desk.Givens[desk.Exercise.Givens[0].Id].ToString(CultureInfo.InvariantCulture)},{desk.Cells(part)},1/0)",
        ["hard-coded"] = (desk, part) => $"={desk.FirstGiven}*0+{desk.Right[part.Id].ToString("R", CultureInfo.InvariantCulture)}",
        ["a formula too large"] = (desk, part) => $"=({desk.Cells(part)})*1.23+{desk.FirstGiven}*0.017",
        ["a formula too small"] = (desk, part) => $"=({desk.Cells(part)})/5000",
        ["zero"] = (_, _) => 0.0,
        ["negative"] = (desk, part) => $"=-({desk.Cells(part)})-{desk.FirstGiven}",
    };

    /// <summary>Roundings, and what each makes of a number, by the mathematics of the framework.</summary>
    private static readonly Dictionary<string, Func<double, double>> Roundings = new()
    {
        ["ROUND({0},0)"] = value => Math.Round(value, MidpointRounding.AwayFromZero),
        ["ROUND({0},1)"] = value => Math.Round(value * 10, MidpointRounding.AwayFromZero) / 10,
        ["ROUND({0},2)"] = value => Math.Round(value * 100, MidpointRounding.AwayFromZero) / 100,
        ["ROUND({0},-1)"] = value => Math.Round(value / 10, MidpointRounding.AwayFromZero) * 10,
        ["MROUND({0},50)"] = value => Math.Round(value / 50, MidpointRounding.AwayFromZero) * 50,
        ["INT({0})"] = Math.Floor,
        ["TRUNC({0})"] = Math.Truncate,
        ["ROUNDUP({0},0)"] = Math.Ceiling,
        ["ROUNDDOWN({0},1)"] = value => Math.Floor(value * 10) / 10,
        ["FLOOR({0},1)"] = Math.Floor,
        ["CEILING({0},5)"] = value => Math.Ceiling(value / 5) * 5,
    };

    public static TheoryData<string> WritingNames => [.. Writings.Keys];

    public static TheoryData<string> FillNames => [.. Fills.Keys];

    public static TheoryData<string> SpoiltNames => [.. Spoilt.Keys];

    public static TheoryData<string> RoundingNames => [.. Roundings.Keys];

    [Theory]
    [MemberData(nameof(WritingNames))]
    public void A_sound_formula_is_sound_however_it_is_written(string writing)
    {
        foreach (var dress in DressesFor(writing))
        {
            Hold(
                dress,
                seat =>
                    seat.Grade(
                        (desk, part) =>
                        {
                            var key = Writings[writing](desk, part);
                            var helper = dress.Contains("{1}", StringComparison.Ordinal) ? desk.Aside(part, "=" + key) : "";
                            return "=" + string.Format(CultureInfo.InvariantCulture, dress, key, helper);
                        }
                    ),
                grade => grade.Outcome == Outcome.Sound && grade.Points == grade.Part.Points
            );
        }
    }

    /// <summary>
    /// All of them over cells. How a cell is named and how a formula is dressed are read by different code, so that of the other writings
    /// each takes a share, and together they take all.
    /// </summary>
    private static IEnumerable<string> DressesFor(string writing) =>
        Array.IndexOf([.. Writings.Keys], writing) is var place and > 0
            ? Dresses.Where((_, at) => at == 0 || at % (Writings.Count - 1) == place - 1)
            : Dresses;

    [Theory]
    [MemberData(nameof(FillNames))]
    public void What_any_method_would_give_earns_nothing_unless_it_is_right(string fill) =>
        Hold(
            fill,
            seat => seat.Grade((desk, _) => Fills[fill](desk)),
            grade =>
                grade.Value.IsNumber && IsRight(grade)
                    ? grade.Outcome is Outcome.ValueOnly or Outcome.Sound
                    : grade.Points == 0
                        && (grade.Outcome is Outcome.Incorrect || (grade.Outcome == Outcome.Misconception && IsCopy(grade.Misconception!)))
        );

    [Theory]
    [MemberData(nameof(SpoiltNames))]
    public void A_later_right_formula_is_not_blamed_for_an_earlier_cell(string how)
    {
        foreach (var place in (int[])[0, 1, 2])
        {
            Hold(
                $"{how} in part {place}",
                seat =>
                    seat.Grade(
                        (desk, part) =>
                            desk.Exercise.Parts.ElementAtOrDefault(place) == part ? Spoilt[how](desk, part) : "=" + desk.Cells(part)
                    ),
                grade =>
                {
                    var spoilt = grade.Exercise.Parts.ElementAtOrDefault(place);
                    if (spoilt == grade.Part)
                        return grade.Outcome != Outcome.Sound
                            || how == "negative"
                            || (how == "breaks on others" && grade.Exercise.Givens[0].IsConstant);
                    return grade.Points == grade.Part.Points
                        && grade.Outcome is Outcome.Sound or Outcome.FollowThrough
                        && (grade.Outcome == Outcome.Sound || Names(grade, spoilt!));
                }
            );
        }
    }

    /// <summary>The finding names the part where the slip is, and not one that only carries it on and earned all its points.</summary>
    private static bool Names(AnswerGrade grade, Part slip) =>
        grade.Findings[0] switch
        {
            AnswerFinding.FollowsThrough(var from, _) => from.SequenceEqual([slip]),
            AnswerFinding.Waits(var missing) => missing.SequenceEqual([slip]),
            _ => false,
        };

    /// <summary>Two wrong turns may cancel out, or the second may be what is right after the first.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Wrong_turns_one_after_another_are_each_known(int which) =>
        Hold(
            $"wrong turn {which} in every part",
            seat =>
                seat.Grade(
                    (desk, part) =>
                        "=" + (part.Misconceptions.ElementAtOrDefault(which) is { } wrong ? desk.Cells(wrong.Formula) : desk.Cells(part))
                ),
            grade =>
                grade.Part.Misconceptions.Count > which
                    ? grade.Outcome is Outcome.Misconception or Outcome.Sound or Outcome.FollowThrough
                    : grade.Points == grade.Part.Points && grade.Outcome is Outcome.Sound or Outcome.FollowThrough
        );

    [Fact]
    public void Hard_coded_numbers_are_never_a_method()
    {
        Hold("hard-coded throughout", seat => seat.Grade((desk, part) => Spoilt["hard-coded"](desk, part)), IsValueOnly);
        Hold(
            "after typed ones",
            seat => seat.Grade((desk, part) => part == desk.Exercise.Parts[^1] ? Spoilt["hard-coded"](desk, part) : desk.Right[part.Id]),
            IsValueOnly
        );
        Hold("typed", seat => seat.Grade((desk, part) => desk.Right[part.Id]), IsValueOnly);
    }

    [Fact]
    public void Text_of_a_formula_is_said_and_is_not_sound() =>
        Hold(
            "text",
            seat => seat.Grade((desk, part) => Spoilt["text of a formula"](desk, part)),
            grade =>
                grade.Outcome != Outcome.Sound
                && (
                    !grade.Value.IsText
                    || grade.Outcome == Outcome.Unreadable
                    || grade.Findings.Any(finding => finding is AnswerFinding.MakesText)
                )
        );

    [Theory]
    [MemberData(nameof(RoundingNames))]
    public void A_rounding_is_one_slip_whatever_the_numbers(string rounding)
    {
        foreach (var place in (int[])[0, 1, 2, 3])
        {
            Hold(
                $"{rounding} in part {place}",
                seat =>
                    seat.Grade(
                        (desk, part) =>
                            "="
                            + (
                                desk.Exercise.Parts.ElementAtOrDefault(place) == part
                                    ? string.Format(CultureInfo.InvariantCulture, rounding, desk.Cells(part))
                                    : desk.Cells(part)
                            )
                    ),
                grade => grade.Exercise.Parts.ElementAtOrDefault(place) != grade.Part || IsAsRounded(grade, rounding)
            );
        }
    }

    /// <summary>
    /// Also where it goes out of tolerance for a few numbers only, which is where students with the same slip could be told different
    /// things.
    /// </summary>
    [Theory]
    [MemberData(nameof(RoundingNames))]
    public void A_rounding_is_the_same_finding_and_share_for_all_students_of_a_deal(string rounding)
    {
        var judged = ((int[])[0, 1, 2, 3]).SelectMany(place =>
            Shipped
                .WholeClass.Take(Trials.Of(8, 2))
                .SelectMany(seat =>
                    seat.Grade(
                        (desk, part) =>
                            "="
                            + (
                                desk.Exercise.Parts.ElementAtOrDefault(place) == part
                                    ? string.Format(CultureInfo.InvariantCulture, rounding, desk.InOneGo(part))
                                    : desk.Cells(part)
                            )
                    )
                )
                .Where(grade =>
                    grade.Part.IsNumber && grade.Exercise.Parts.ElementAtOrDefault(place) == grade.Part && !Collapses(grade, rounding)
                )
        );
        var unlike = judged
            .GroupBy(grade => $"{grade.Exercise.Id}.{grade.Part.Id}")
            .Where(part => part.Select(grade => (grade.Outcome, grade.Points, grade.Misconception?.Id)).Distinct().Count() > 1)
            .Select(part =>
                $"{part.Key}: {string.Join(", ", part.Select(grade => $"{grade.Value} for {grade.Expected} {grade.Outcome} {grade.Points}"))}"
            )
            .ToList();
        Assert.True(unlike.Count == 0, $"{rounding}: {unlike.Count} parts\n{string.Join('\n', unlike.Take(12))}");
    }

    /// <summary>
    /// True where so many numbers are rounded to one that the few trials of a student may all be: a constant, which shows no method.
    /// </summary>
    private static bool Collapses(AnswerGrade grade, string rounding)
    {
        var draws = Draws[grade.Exercise.Id];
        return draws.GroupBy(variant => Roundings[rounding](variant.Answers[grade.Part.Id])).Max(group => group.Count())
            > 0.2 * draws.Count;
    }

    [Fact]
    public void A_percentage_a_hundred_times_too_large_is_told_where_it_stands_and_costs_nothing_later()
    {
        Hold(
            "percent",
            seat =>
                seat.Grade(
                    (desk, part) =>
                        part.Unit.IsPercent && part == desk.Exercise.Parts.First(one => one.Unit.IsPercent)
                            ? desk.Right[part.Id] * 100
                            : "=" + desk.Cells(part)
                ),
            grade =>
                grade.Part.Unit.IsPercent && grade.Part == grade.Exercise.Parts.First(one => one.Unit.IsPercent)
                    ? grade.Outcome == Outcome.ValueOnly && grade.Findings.Any(finding => finding is AnswerFinding.HundredfoldPercent)
                    : grade.Points == grade.Part.Points
        );
    }

    private static readonly Dictionary<string, IReadOnlyList<Variant>> Draws = Shipped.Exercises.ToDictionary(
        exercise => exercise.Id,
        exercise =>
        {
            var (generator, random) = (VariantGenerator.ForFreshInputs(exercise), SeededDraws.For(99, "rounding", exercise.Id));
            return (IReadOnlyList<Variant>)[.. Enumerable.Range(0, 200).Select(_ => generator.Draw(random).Variant).OfType<Variant>()];
        }
    );

    /// <summary>
    /// Right where it never goes out of tolerance; one slip with one share where it often does; in between either. A rounding to one number
    /// for all shows no method.
    /// </summary>
    private static bool IsAsRounded(AnswerGrade grade, string rounding)
    {
        var rounded = Draws[grade.Exercise.Id]
            .Select(variant => (Right: variant.Answers[grade.Part.Id], Rounded: Roundings[rounding](variant.Answers[grade.Part.Id])))
            .ToList();
        var outside = rounded.Count(pair => !grade.Part.Tolerance.Accepts(pair.Right, pair.Rounded)) / (double)rounded.Count;
        var commonest = rounded.GroupBy(pair => pair.Rounded).Max(group => group.Count()) / (double)rounded.Count;
        var isSlip =
            grade.Outcome == Outcome.Incorrect
            && grade.Points == 0.6m * grade.Part.Points
            && grade.Findings is [AnswerFinding.RoundsAnswer or AnswerFinding.RoundsEarlier or AnswerFinding.RoundsWithin];
        var nearest = rounded.Max(pair => Math.Abs(pair.Rounded - pair.Right) / (grade.Part.Tolerance.Around(pair.Right) + 1e-9));
        if (outside == 0 && nearest < 0.9)
            return grade.Outcome == Outcome.Sound || (commonest > 0.5 && grade.Outcome == Outcome.ValueOnly);
        if (grade.Outcome == Outcome.Misconception)
            return grade.Part.Misconceptions.Count > 0;
        return outside < 0.2
            ? isSlip || grade.Outcome == Outcome.Sound
            : isSlip || (commonest > 0.5 && grade.Outcome is Outcome.Incorrect or Outcome.ValueOnly);
    }

    private static bool IsValueOnly(AnswerGrade grade) =>
        grade.Outcome == Outcome.ValueOnly
        && grade.Points == Math.Round(grade.Part.Points * (grade.Part.FormulaAsked ? 0.4m : 1), 2, MidpointRounding.AwayFromZero);

    private static bool IsRight(AnswerGrade grade) =>
        grade.Part.Tolerance.Accepts(grade.Expected, grade.Value.Number)
        || (grade.Part.Unit.IsPercent && grade.Part.Tolerance.Accepts(grade.Expected, grade.Value.Number / 100));

    private static bool IsCopy(Misconception misconception) => misconception.Formula.Names.Count == 1;

    /// <summary>Over an earlier answer that a slip made tiny, the tolerance of a right one would take anything for the method.</summary>
    [Theory]
    [InlineData("({0})*2")]
    [InlineData("({0})*1.3")]
    [InlineData("({0})/3")]
    public void A_wrong_formula_over_a_tiny_earlier_answer_shows_no_method(string wrong)
    {
        foreach (var place in (int[])[0, 1])
        {
            Hold(
                $"{wrong} behind part {place}",
                seat =>
                    seat.Grade(
                        (desk, part) =>
                        {
                            var spoilt = desk.Exercise.Parts.ElementAtOrDefault(place);
                            if (part == spoilt)
                                return $"=({desk.Cells(part)})/5000";
                            return "="
                                + (
                                    Uses(part, spoilt)
                                        ? string.Format(CultureInfo.InvariantCulture, wrong, desk.Cells(part))
                                        : desk.Cells(part)
                                );
                        }
                    ),
                grade =>
                    !Uses(grade.Part, grade.Exercise.Parts.ElementAtOrDefault(place))
                    || grade.Outcome is not (Outcome.Sound or Outcome.FollowThrough)
            );
        }
    }

    private static bool Uses(Part part, Part? earlier) => earlier is not null && earlier != part && part.Key.Names.Contains(earlier.Id);

    private static void Hold(string way, Func<Seat, IReadOnlyList<AnswerGrade>> fill, Func<AnswerGrade, bool> isAsMade)
    {
        var misjudged = Shipped
            .Seats.SelectMany(seat =>
                fill(seat)
                    .Where(grade => grade.Part.IsNumber && !isAsMade(grade))
                    .Select(grade =>
                        $"{grade.Exercise.Id}.{grade.Part.Id}: {grade.Formula ?? grade.Value.ToString()} = {grade.Value} for {grade.Expected} is {grade.Outcome} {grade.Misconception?.Id} with {grade.Points} of {grade.Part.Points}: {string.Join(", ", grade.Findings)}"
                    )
            )
            .ToList();
        Assert.True(misjudged.Count == 0, $"{way}: {misjudged.Count} misjudged\n{string.Join('\n', misjudged.Take(12))}");
    }
}
