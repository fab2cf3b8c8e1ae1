using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// When work was due: as named now, else as on record in earlier grades, else as dealt; on the clocks of the class profile, else of the
/// deal.
/// </summary>
/// <param name="Named">What the instructor named; null for nothing.</param>
/// <param name="ClassFile">The class profile; null for what the deal knows.</param>
/// <param name="Earlier">The earlier grades; null if there are none.</param>
internal sealed record Deadline(DueWish? Named, string? ClassFile, ClassGrades? Earlier)
{
    /// <summary>The moment for a class, or what is wrong with its profile.</summary>
    public Reading<SettledDeadline> Settle(DealtClass dealt)
    {
        var profile = ClassFile is null ? null : ClassProfileReader.Read(ClassFile);
        if (profile is { Succeeded: false })
            return new(null, profile.Problems);
        var known = Earlier is null ? dealt.Due : Earlier.Due;
        return new(
            new(Named is null ? known : Named.In(profile?.Model?.TimeZone ?? dealt.TimeZone))
            {
                IsNamed = Named is not null,
                OnRecord = known,
                IsAsDealt = known is not null && known == dealt.Due,
            },
            []
        );
    }
}
