using ClassKit.Exercises.Authoring;

namespace ClassKit.Lessons.Authored;

/// <summary>How the leavening behaves in one bread, in words: what the comparison sets side by side.</summary>
/// <remarks>Only what cannot be computed stands here; amounts of gas come from the formula itself.</remarks>
/// <param name="GasSource">Where the gas comes from.</param>
/// <param name="Onset">When it begins.</param>
/// <param name="TimeCourse">How it goes on, and when it ends.</param>
/// <param name="Limit">What limits it.</param>
/// <param name="Crumb">What it does to the crumb.</param>
/// <param name="Flavour">What it does to the flavour.</param>
/// <param name="Colour">What it does to the colour of the crust.</param>
/// <param name="Salt">How salt and sodium bear on it.</param>
/// <param name="FailureSigns">How one sees that it failed.</param>
/// <param name="ChooseWhen">When to choose it.</param>
public sealed record LeaveningTraits(
    TextTemplate GasSource,
    TextTemplate Onset,
    TextTemplate TimeCourse,
    TextTemplate Limit,
    TextTemplate Crumb,
    TextTemplate Flavour,
    TextTemplate Colour,
    TextTemplate Salt,
    TextTemplate FailureSigns,
    TextTemplate ChooseWhen
)
{
    /// <summary>Every text of it changed in one way.</summary>
    internal LeaveningTraits With(Func<TextTemplate, TextTemplate> change) =>
        new(
            change(GasSource),
            change(Onset),
            change(TimeCourse),
            change(Limit),
            change(Crumb),
            change(Flavour),
            change(Colour),
            change(Salt),
            change(FailureSigns),
            change(ChooseWhen)
        );
}
