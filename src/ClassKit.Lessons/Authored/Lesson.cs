using ClassKit.Baking.Allergens;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Exercises.Pictures;
using ClassKit.Lessons.Rubrics;

namespace ClassKit.Lessons.Authored;

/// <summary>One authored lesson.</summary>
/// <param name="Id">The folder's name.</param>
/// <param name="Title">The title.</param>
/// <param name="Summary">One or two sentences.</param>
/// <param name="PeriodMinutes">How long it is meant to take.</param>
/// <param name="Objectives">What students can do afterwards.</param>
/// <param name="PriorKnowledge">What they need beforehand.</param>
/// <param name="Vocabulary">Terms and meanings.</param>
/// <param name="Cautions">What can hurt someone in this lesson.</param>
/// <param name="TalkingPoints">What the instructor does and says, moment by moment.</param>
/// <param name="Questions">Discussion questions with model answers.</param>
/// <param name="Failures">Common failures with causes and cures.</param>
/// <param name="Formulas">What is baked, one for each leavening.</param>
/// <param name="Exercises">The practice problems.</param>
/// <param name="Marking">How the practice problems are marked.</param>
/// <param name="BenchRubric">How the work at the bench is judged.</param>
/// <param name="HandoutText">Markdown for students.</param>
/// <param name="GuideText">Markdown for the instructor.</param>
public sealed record Lesson(
    string Id,
    string Title,
    TextTemplate Summary,
    int PeriodMinutes,
    IReadOnlyList<TextTemplate> Objectives,
    IReadOnlyList<TextTemplate> PriorKnowledge,
    IReadOnlyList<Term> Vocabulary,
    IReadOnlyList<Caution> Cautions,
    IReadOnlyList<TalkingPoint> TalkingPoints,
    IReadOnlyList<Question> Questions,
    IReadOnlyList<Failure> Failures,
    IReadOnlyList<LessonFormula> Formulas,
    IReadOnlyList<Exercise> Exercises,
    MarkingScheme Marking,
    PracticalRubric BenchRubric,
    TextTemplate HandoutText,
    TextTemplate GuideText
)
{
    /// <summary>What the instructor shows to all teams at once, in order.</summary>
    public IReadOnlyList<LessonDemonstration> Demonstrations { get; init; } = [];

    /// <summary>Breads of the lesson with something changed on purpose, which the teams of a class share out, in order.</summary>
    public IReadOnlyList<SeriesMember> Series { get; init; } = [];

    /// <summary>What the period keeps for other things than baking.</summary>
    public SetAside SetAside { get; init; } = SetAside.Usual;

    /// <summary>The pictures that its own text names.</summary>
    public IReadOnlyList<Picture> Pictures { get; init; } = [];

    /// <summary>
    /// The demonstrations that weigh out something of their own; what a control takes is declared with the bread that it is a control of.
    /// </summary>
    public IReadOnlyList<LessonDemonstration> Weighing =>
        [
            .. Demonstrations.Where(shown =>
                shown
                    .Ingredients.Select(line => line.Ingredient.Id)
                    .Except(
                        Formulas
                            .Where(bread => bread.Formula.Id == shown.ControlOf)
                            .SelectMany(bread => bread.Ingredients)
                            .Select(ingredient => ingredient.Id)
                    )
                    .Any()
            ),
        ];

    /// <summary>What must be declared, over all breads and what is weighed out to be shown, each once, by name.</summary>
    public IReadOnlyList<Allergen> Allergens =>
        ByName(BreadAllergens.Concat(Demonstrations.SelectMany(shown => shown.Ingredients).SelectMany(line => line.Ingredient.Allergens)));

    /// <summary>The same over all breads: what somebody tastes.</summary>
    public IReadOnlyList<Allergen> BreadAllergens => ByName(Formulas.SelectMany(formula => formula.Allergens));

    private static IReadOnlyList<Allergen> ByName(IEnumerable<Allergen> allergens) =>
        [.. allergens.Distinct().OrderBy(allergen => allergen.Name, StringComparer.Ordinal)];
}
