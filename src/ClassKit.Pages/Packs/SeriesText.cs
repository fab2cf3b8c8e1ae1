using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Numbers;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Packs;

/// <summary>A series in words: in what its breads differ, and who makes which.</summary>
internal static class SeriesText
{
    /// <summary>"without baking powder", "proof 20 min"; of the bread as it is written, that nothing is.</summary>
    public static string Differs(SeriesPlace place) => place.IsAsWritten ? "nothing changed" : Phrases.List([.. place.Changes.Select(Of)]);

    /// <summary>"teams 2 and 5".</summary>
    public static string Teams(FormulaCard card) => $"{Counted.Noun(card.Teams.Count, "team")} {Phrases.List(card.TeamNames)}";

    /// <summary>"teams 2 and 5", or the instructor, where a bread is left to them.</summary>
    public static string Makers(ComputedPack pack, LessonFormula bread) =>
        pack.Cards.First(card => card.Bread.Formula.Id == bread.Formula.Id) is { IsInstructors: false } card
            ? Teams(card)
            : "the instructor";

    /// <summary>"Teams 2 and 5 make 6 powder rolls: held 20 min."</summary>
    public static string Sentence(FormulaCard card) =>
        Phrases.Sentence(
            $"{Teams(card)} {(card.Teams.Count == 1 ? "makes" : "make")} {card.Pieces} {card.Bread.Formula.Title.ToLowerInvariant()}"
        );

    /// <summary>The bread that it is held against, as it stands in a sentence.</summary>
    public static string Base(ComputedPack pack, SeriesPlace place) =>
        pack.Lesson.Formulas.First(bread => bread.Formula.Id == place.OfId).Formula.Title.ToLowerInvariant();

    /// <summary>True of a step whose time is what the series changes: to wait for its sign would be to undo the change.</summary>
    public static bool IsByTheClock(SeriesPlace? place, MethodStep step) =>
        place is not null && place.Changes.OfType<SeriesChange.Timed>().Any(timed => timed.StepName == step.Name);

    /// <summary>True of a step at which the bread is treated otherwise than the one it is held against: marked on its card.</summary>
    public static bool IsChanged(SeriesPlace? place, MethodStep step) =>
        IsByTheClock(place, step)
        || (place is not null && place.Changes.OfType<SeriesChange.Held>().Any(held => held.AfterStep == step.Name));

    /// <summary>
    /// True where a bread and the one as written both make more gas than such a dough is taken to hold, so that their forecasts are as good
    /// as one.
    /// </summary>
    public static bool IsToldApartByNoForecast(LeaveningComparison compared, LeaveningComparison asWritten) =>
        compared.IsRisePredicted
        && asWritten.IsRisePredicted
        && compared.PerPiece.Held.Limit == RiseLimit.Walls
        && asWritten.PerPiece.Held.Limit == RiseLimit.Walls
        && compared.PerPiece.Held.Baked.Typical.Millilitres > asWritten.PerPiece.Held.Baked.Typical.Millilitres * AsGoodAsOne;

    /// <summary>Within a tenth nobody tells two breads apart by the eye. From memory.</summary>
    private const double AsGoodAsOne = 0.9;

    private static string Of(SeriesChange change) =>
        change switch
        {
            SeriesChange.LeftOut left => $"without {left.Ingredient.Name.ToLowerInvariant()}",
            SeriesChange.Share share =>
                $"{NumberText.WithUnit(NumberText.AtMost(share.Percent, 2), "%")} {share.Ingredient.Name.ToLowerInvariant()}",
            SeriesChange.Weakened weak =>
                $"{weak.Ingredient.Name.ToLowerInvariant()} with {NumberText.WithUnit(NumberText.AtMost(PerHundred.Of(weak.Strength), 0), "%")} of its strength left",
            SeriesChange.Aged aged => $"{aged.Ingredient.Name.ToLowerInvariant()} {aged.How}",
            SeriesChange.Timed timed => $"{timed.StepName.ToLowerInvariant()} {KitchenText.Minutes(timed.MinMinutes, timed.MaxMinutes)}",
            SeriesChange.Held held => $"held {KitchenText.Minutes(held.Minutes, held.Minutes)} after {held.AfterStep.ToLowerInvariant()}",
            _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A change of a series that has no words."),
        };
}
