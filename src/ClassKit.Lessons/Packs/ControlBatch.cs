using System.Collections.ObjectModel;
using ClassKit.Baking.Batches;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Packs;

/// <summary>A bread without what leavens it, to hold the bread against: whatever it lacks in height is what the leavening did.</summary>
/// <param name="Shown">The demonstration that mixes it.</param>
/// <param name="Of">The bread that it is held against.</param>
/// <param name="Batch">What the instructor weighs, a portion for each team.</param>
/// <param name="LeftOut">What leavens the bread and is not in it.</param>
/// <param name="Compared">The gas of one piece of it here: beaten-in air and vapour.</param>
public sealed record ControlBatch(
    LessonDemonstration Shown,
    LessonFormula Of,
    Batch Batch,
    IReadOnlyList<Ingredient> LeftOut,
    LeaveningComparison Compared
)
{
    /// <summary>As a team measures it beside a bread that it is held against: one piece, in rows of its own.</summary>
    /// <param name="bread">The bread, or one of its series.</param>
    public LeaveningComparison BehindOf(LessonFormula bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        var own = Compared.Bread;
        var without = string.Join(" and ", LeftOut.Select(left => left.Name.Split(',')[0].ToLowerInvariant()));
        return Compared with
        {
            Bread = own with
            {
                Formula = own.Formula with
                {
                    Id = bread.Formula.Id + "-control",
                    Title = $"Control: {bread.Formula.Title.ToLowerInvariant()} without {without}",
                },
                Observations = [.. bread.Observations.Select(OfControl)],
            },
        };
    }

    /// <summary>What a control asks is about what was left out; its masses and its middle are asked like those of its bread.</summary>
    private static Observation OfControl(Observation observed) =>
        observed.Measure is Measure.Height or Measure.Diameter
            ? new(
                observed.Measure,
                "Did it stand longer than the others, or was less of it taken?",
                "What lifts a mixture in which nothing makes gas? And did any of what was left out get into it?"
            )
            : observed;

    /// <summary>The demonstration with its control weighed out; as it is where it makes none.</summary>
    internal static Computed<LessonDemonstration> WeighedFor(LessonDemonstration shown, Lesson lesson, ClassProfile profile)
    {
        if (BreadOf(shown, lesson) is not { } bread)
            return shown;
        return Weighed(bread, profile)
            .Then<LessonDemonstration>(batch =>
                shown with
                {
                    Ingredients =
                    [
                        .. shown.Ingredients,
                        .. batch.Lines.Select(line => new WeighedIngredient(line.Ingredient, line.Weighed)),
                    ],
                }
            );
    }

    /// <summary>The controls that a lesson's demonstrations mix, in their order.</summary>
    /// <param name="lesson">The lesson for the class.</param>
    /// <param name="profile">The class.</param>
    /// <param name="mixed">How warm a bread's own mix is.</param>
    /// <param name="pressure">The air's.</param>
    /// <param name="settings">What is assumed of gas.</param>
    internal static Computed<ReadOnlyCollection<ControlBatch>> AllOf(
        Lesson lesson,
        ClassProfile profile,
        Func<LessonFormula, Temperature> mixed,
        Pressure pressure,
        GasBudgetSettings settings
    )
    {
        List<ControlBatch> controls = [];
        foreach (var shown in lesson.Demonstrations)
        {
            if (BreadOf(shown, lesson) is not { } bread)
                continue;
            var without = bread with { Formula = Unleavened(bread.Formula) };
            if (
                !Weighed(bread, profile).TryGet(out var batch, out var why)
                || !LeaveningComparison
                    .Of(without, new(mixed(bread), profile.KitchenTemperature, batch.Exact), pressure, settings)
                    .TryGet(out var compared, out why)
            )
                return why;
            controls.Add(new(shown, bread, batch, [.. bread.Formula.Lines.Select(line => line.Ingredient).Where(Leavens)], compared));
        }
        return controls.AsReadOnly();
    }

    private static LessonFormula? BreadOf(LessonDemonstration shown, Lesson lesson) =>
        lesson.Formulas.FirstOrDefault(formula => formula.Formula.Id == shown.ControlOf);

    private static Computed<Batch> Weighed(LessonFormula bread, ClassProfile profile) =>
        Scaling.FromPieces(
            Unleavened(bread.Formula),
            profile.Teams,
            bread.PieceMass,
            DoughLoss.Of(bread.WeighedBesidesPercent),
            new Scales(profile.ScaleResolution, profile.SmallScaleResolution)
        );

    /// <summary>Everything but soda, powder and yeast, in the same proportions.</summary>
    private static BakersFormula Unleavened(BakersFormula formula) =>
        formula with
        {
            Lines = [.. formula.Lines.Where(line => !Leavens(line.Ingredient))],
        };

    private static bool Leavens(Ingredient ingredient) => ingredient.Role is IngredientRole.ChemicalLeavening or IngredientRole.Yeast;
}
