using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>What is written down as dealt: a variant's numbers in the places that a layout has for them.</summary>
public static class DealtPlaces
{
    /// <summary>A variant's givens, in order.</summary>
    public static IEnumerable<DealtGiven> GivensOf(this PracticeLayout layout, Variant variant)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(variant);
        return layout.Of(variant.Exercise.Id).Givens.Select(place => place.Dealt(variant.Exercise, variant.Givens[place.Given.Id]));
    }

    /// <summary>A value in the place of its given.</summary>
    public static DealtGiven Dealt(this GivenPlace place, Exercise exercise, decimal value)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(exercise);
        return new(exercise.Id, place.Given.Id, place.DefinedName, place.Address, place.Tag, value);
    }

    /// <summary>What a variant's answers are to be, in order.</summary>
    public static IEnumerable<DealtAnswer> AnswersOf(this PracticeLayout layout, Variant variant)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(variant);
        return layout.Of(variant.Exercise.Id).Answers.Select(place =>
            new DealtAnswer(variant.Exercise.Id, place.Part.Id, place.DefinedName, place.Address, place.Tag, variant.Answers[place.Part.Id]));
    }

    /// <summary>The layout of what one student was dealt.</summary>
    public static PracticeLayout Of(this PracticeLayout layout, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(student);
        return layout.Only(student.Answers.Select(answer => answer.Exercise).ToHashSet());
    }
}
