using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.Findings;

/// <summary>Why a returned file does not count.</summary>
public abstract record Uncounted
{
    private Uncounted() { }

    /// <summary>The same reason under other names.</summary>
    internal virtual Uncounted Under(IDisguise disguise) => this;

    /// <summary>It was not read.</summary>
    /// <param name="Refusal">Why not.</param>
    public sealed record NotRead(Refusal Refusal) : Uncounted
    {
        internal override Uncounted Under(IDisguise disguise) => new NotRead(Refusal.Under(disguise));
    }

    /// <summary>It is a workbook, but nobody of the class was dealt it.</summary>
    /// <param name="Cohort">The class; empty where nobody has named it.</param>
    public sealed record OfNobody(string Cohort) : Uncounted;

    /// <summary>It is a workbook of another deal.</summary>
    /// <param name="Other">Which.</param>
    /// <param name="LessonTitle">The title of what was dealt here.</param>
    /// <param name="Code">The code of the deal that was wanted; null if it has none.</param>
    public sealed record OfOtherDeal(OtherDeal Other, string LessonTitle, string? Code) : Uncounted
    {
        internal override Uncounted Under(IDisguise disguise) => this with { Other = Other.Under(disguise) };
    }

    /// <summary>It is the file that was graded, byte for byte.</summary>
    /// <param name="Graded">The one that was graded.</param>
    public sealed record Copy(ReturnedName Graded) : Uncounted
    {
        internal override Uncounted Under(IDisguise disguise) => new Copy(Graded.Under(disguise));
    }

    /// <summary>Another file of the same student counts.</summary>
    /// <param name="Student">The student.</param>
    /// <param name="Points">What it is worth.</param>
    /// <param name="OutOf">Of how many points.</param>
    /// <param name="Graded">The one that was graded.</param>
    /// <param name="Because">Why that one.</param>
    public sealed record OtherVersion(Student Student, decimal Points, decimal OutOf, ReturnedName Graded, WhyThatVersion Because)
        : Uncounted
    {
        internal override Uncounted Under(IDisguise disguise) =>
            this with
            {
                Student = disguise.OfStudent(Student),
                Graded = Graded.Under(disguise),
                Because = Because.Under(disguise),
            };
    }
}
