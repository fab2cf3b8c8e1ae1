using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Series;

/// <summary>A lesson whose series is shared out among the teams of a class, each of its breads a bread of its own.</summary>
public static class SharedOut
{
    /// <summary>
    /// The lesson with every bread of every series behind the bread that it is held against; the same lesson where it has no series.
    /// </summary>
    /// <remarks>
    /// Teams take the breads of a series in turn, the bread as written first. Where there are more teams than breads several make the same,
    /// where there are fewer a team makes several: none is left out.
    /// </remarks>
    /// <param name="lesson">The lesson as its author wrote it.</param>
    /// <param name="teams">How many teams there are; at least 1.</param>
    public static Lesson Among(Lesson lesson, int teams)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentOutOfRangeException.ThrowIfLessThan(teams, 1);
        if (lesson.Series.Count == 0)
            return lesson;
        return lesson with
        {
            Series = [],
            Formulas =
            [
                .. lesson.Formulas.SelectMany(bread =>
                    Shared(bread, [.. lesson.Series.Where(member => member.FormulaId == bread.Formula.Id)], teams)
                ),
            ],
        };
    }

    /// <summary>The teams to which a bread of a series falls.</summary>
    /// <param name="at">Its place, the bread as written 0.</param>
    /// <param name="breads">How many there are.</param>
    /// <param name="teams">How many teams.</param>
    public static IReadOnlyList<int> TeamsOf(int at, int breads, int teams) =>
        [.. Enumerable.Range(0, Math.Max(breads, teams)).Where(turn => turn % breads == at).Select(turn => turn % teams + 1)];

    private static IEnumerable<LessonFormula> Shared(LessonFormula bread, IReadOnlyList<SeriesMember> members, int teams)
    {
        if (members.Count == 0)
            return [bread];
        return
        [
            bread with
            {
                Place = new(bread.Formula.Id, "", "", [], TeamsOf(0, members.Count + 1, teams)),
            },
            .. members.Select(
                (member, at) =>
                    ChangedBread.Of(bread, member) with
                    {
                        Place = new(bread.Formula.Id, member.Name, member.Text, member.Changes, TeamsOf(at + 1, members.Count + 1, teams))
                        {
                            IsPastItsTime = member.Changes.Any(change => IsPastItsTime(bread, change)),
                        },
                    }
            ),
        ];
    }

    /// <summary>
    /// What soda or powder made at once leaks out of a dough that stands, and one with yeast that rises too long loses its strength.
    /// </summary>
    private static bool IsPastItsTime(LessonFormula bread, SeriesChange change) =>
        change switch
        {
            SeriesChange.Held => !bread.Formula.IsFermented
                && bread.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.ChemicalLeavening),
            SeriesChange.Timed timed => bread.Formula.IsFermented
                && bread.Steps.Any(step =>
                    step.Name == timed.StepName && step is { Way: null, Work.People: 0 } && timed.MinMinutes > step.MaxMinutes
                ),
            _ => false,
        };
}
