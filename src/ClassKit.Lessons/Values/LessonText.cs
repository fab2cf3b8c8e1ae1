namespace ClassKit.Lessons;

/// <summary>Changes every authored text of a lesson in one way.</summary>
public static class LessonText
{
    /// <summary>The lesson with each text put through a function.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="change">Takes a text and the formula in whose file it stands; null for the lesson's own.</param>
    public static Lesson Map(Lesson lesson, Func<string, LessonFormula?, string> change)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(change);
        return lesson with
        {
            Summary = Own(lesson.Summary),
            Objectives = [.. lesson.Objectives.Select(Own)],
            PriorKnowledge = [.. lesson.PriorKnowledge.Select(Own)],
            Vocabulary = [.. lesson.Vocabulary.Select(term => term with { Meaning = Own(term.Meaning) })],
            Cautions = [.. lesson.Cautions.Select(caution => caution with { Text = Own(caution.Text) })],
            TalkingPoints = [.. lesson.TalkingPoints.Select(point => point with { What = Own(point.What), Say = Own(point.Say) })],
            Questions = [.. lesson.Questions.Select(question => new Question(Own(question.Ask), Own(question.ModelAnswer)))],
            Failures = [.. lesson.Failures.Select(failure => new Failure(Own(failure.Sign), Own(failure.Cause), Own(failure.Cure)))],
            Demonstrations = [.. lesson.Demonstrations.Select(shown => shown with { Text = Own(shown.Text) })],
            HandoutText = Own(lesson.HandoutText),
            GuideText = Own(lesson.GuideText),
            Formulas = [.. lesson.Formulas.Select(formula => Map(formula, text => change(text, formula)))],
        };

        string Own(string text) => change(text, null);
    }

    private static LessonFormula Map(LessonFormula formula, Func<string, string> change) => formula with
    {
        Why = change(formula.Why),
        Notes = change(formula.Notes),
        Steps = [.. formula.Steps.Select(step => step with { Text = change(step.Text) })],
        Cautions = [.. formula.Cautions.Select(caution => caution with { Text = change(caution.Text) })],
        Surfaces = [.. formula.Surfaces.Select(surface => surface with { For = change(surface.For) })],
        Observations = [.. formula.Observations.Select(observed => observed with { IfLess = change(observed.IfLess), IfMore = change(observed.IfMore) })],
        Traits = Map(formula.Traits, change),
    };

    private static LeaveningTraits Map(LeaveningTraits traits, Func<string, string> change) => new(
        change(traits.GasSource), change(traits.Onset), change(traits.TimeCourse), change(traits.Limit), change(traits.Crumb),
        change(traits.Flavour), change(traits.Colour), change(traits.Salt), change(traits.FailureSigns), change(traits.ChooseWhen));
}
