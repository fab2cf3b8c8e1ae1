using ClassKit.Exercises.Layout;

namespace ClassKit.Exercises.Dealing;

/// <summary>What was dealt, in the places that a layout has for it.</summary>
public static class DealtPlaces
{
    /// <summary>Every given of a student, in workbook order.</summary>
    public static IEnumerable<DealtGiven> GivensOf(this PracticeLayout layout, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(student);
        return from variant in student.Variants
            let exercise = variant.Exercise.Id
            from place in layout.Of(exercise).Givens
            select new DealtGiven(exercise, place.Given.Id, place.DefinedName, place.Address, place.Tag, variant.Givens[place.Given.Id]);
    }

    /// <summary>What every answer of a student is to be, in workbook order.</summary>
    public static IEnumerable<DealtAnswer> AnswersOf(this PracticeLayout layout, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(student);
        return from variant in student.Variants
            let exercise = variant.Exercise.Id
            from place in layout.Of(exercise).Answers
            select new DealtAnswer(exercise, place.Part.Id, place.DefinedName, place.Address, place.Tag, variant.Answers[place.Part.Id]);
    }

    /// <summary>The layout of what one student was dealt.</summary>
    public static PracticeLayout Of(this PracticeLayout layout, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(student);
        return layout.Only(student.Variants.Select(variant => variant.Exercise.Id).ToHashSet());
    }
}
