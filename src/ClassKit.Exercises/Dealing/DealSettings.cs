using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Layout;

namespace ClassKit.Exercises.Dealing;

/// <summary>How a class is dealt, where it is not dealt as usual.</summary>
/// <param name="Purpose">What it is for.</param>
/// <param name="Avoid">Numbers that must not come again.</param>
public sealed record DealSettings(DealPurpose Purpose, NumbersToAvoid Avoid)
{
    /// <summary>Graded work, the first of its kind.</summary>
    public static DealSettings Usual { get; } = new(DealPurpose.Graded, NumbersToAvoid.None);

    /// <summary>The deal that this one is sat again for, with other numbers; null for a first sitting.</summary>
    public DealIdentity? Replaces { get; init; }

    /// <summary>
    /// How sets were chosen where students have different ones; empty where everyone gets the same. Part of the deal's identity.
    /// </summary>
    public string Choice { get; init; } = "";

    /// <summary>What was dealt of this very deal already: its students keep what they have. Null for a new deal.</summary>
    public DealtClass? Before { get; init; }

    /// <summary>How the exercises stand on their sheets; the same as <see cref="Before"/> where there is one.</summary>
    public PracticePlan Plan { get; init; } = PracticePlan.Usual;

    /// <summary>The ids of each student's exercises, by student id; null where everyone gets all.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>>? Sets { get; init; }

    /// <summary>True if an exercise is of a student's set, whether or not it is left out for the student.</summary>
    public bool Gives(Student student, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(exercise);
        return Sets is null || Sets[student.Id].Contains(exercise.Id);
    }
}
