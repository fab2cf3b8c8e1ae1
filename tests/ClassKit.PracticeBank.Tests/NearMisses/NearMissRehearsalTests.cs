using ClassKit.Grading.Findings;

namespace ClassKit.PracticeBank.Tests.NearMisses;

/// <summary>
/// Students make slips that no exercise lists, over everything that ships. Which slip it was is known, because it was made; the shares are
/// those that the issue asks for.
/// </summary>
public sealed class NearMissRehearsalTests(ITestOutputHelper output)
{
    private static readonly Lazy<IReadOnlyList<RehearsedSlips.Tried>> Formulas = new(() =>
        RehearsedSlips.Rehearse(SlipOfThePen.Of, "formulas", isTyped: false)
    );

    private static readonly Lazy<IReadOnlyList<RehearsedSlips.Tried>> Numbers = new(() =>
        RehearsedSlips.Rehearse(SlipOfThePen.Of, "numbers", isTyped: true)
    );

    [Fact]
    public void Of_formulas_with_a_slip_that_nobody_listed_95_of_100_are_named_and_at_most_one_wrongly() =>
        Holds(Formulas.Value, 0.95, 0.01);

    [Fact]
    public void Of_typed_numbers_with_such_a_slip_70_of_100_are_named_and_at_most_one_wrongly() => Holds(Numbers.Value, 0.70, 0.01);

    [Fact]
    public void Of_slips_that_the_search_does_not_have_at_most_two_of_100_are_named_wrongly()
    {
        Holds(RehearsedSlips.Rehearse(SlipOfThePen.HeldOut, "held out", isTyped: false), 0, 0.02);
        Holds(RehearsedSlips.Rehearse(SlipOfThePen.HeldOut, "held out, typed", isTyped: true), 0, 0.02);
    }

    private void Holds(IReadOnlyList<RehearsedSlips.Tried> tried, double named, double wrongly)
    {
        var right = tried.Count(one => TriedSlip.IsNamed(one.Grade) && one.Slip.IsTrue(one.Grade));
        var wrong = tried.Where(one => TriedSlip.IsNamed(one.Grade) && !one.Slip.IsTrue(one.Grade)).ToList();
        output.WriteLine($"{tried.Count} slips, {right} named, {wrong.Count} wrongly");
        foreach (var kind in tried.GroupBy(one => one.Slip.Slip.Kind))
            output.WriteLine(
                $"  {kind.Key}: {kind.Count()}, named {kind.Count(one => TriedSlip.IsNamed(one.Grade) && one.Slip.IsTrue(one.Grade))}"
            );
        foreach (
            var kind in wrong.GroupBy(one =>
                one.Grade.Findings[0] is AnswerFinding.NearMiss miss
                    ? miss.Edits[0].GetType().Name + miss.Edits.Count
                    : one.Grade.Findings[0].GetType().Name
            )
        )
            output.WriteLine($"  wrongly: {kind.Key} {kind.Count()}");
        Assert.True(tried.Count > 1000, $"Only {tried.Count} slips.");
        Assert.True(right >= named * tried.Count, $"{right} of {tried.Count} were named.");
        Assert.True(
            wrong.Count <= wrongly * tried.Count,
            $"{wrong.Count} of {tried.Count} were named wrongly: {string.Join("\n", wrong.Take(10))}"
        );
    }
}
