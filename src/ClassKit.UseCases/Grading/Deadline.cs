using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Grading;

/// <summary>When work was due: as named now, else as on record in the folder of grades; on the clocks of the class profile, else of the deal.</summary>
/// <param name="Named">What the instructor named; null for nothing.</param>
/// <param name="ClassFile">The class profile; null for what the deal knows.</param>
/// <param name="Graded">The folder of grades, which may be new; null if there is none to look at.</param>
internal sealed record Deadline(DueWish? Named, string? ClassFile, string? Graded)
{
    /// <summary>The moment for a class, or what is wrong with its profile.</summary>
    public Reading<SettledDeadline> Settle(DealtClass dealt)
    {
        var profile = ClassFile is null ? null : ClassProfileReader.Read(ClassFile);
        if (profile is { Succeeded: false }) return new(null, profile.Problems);
        var earlier = Graded is null || !File.Exists(Path.Combine(Graded, GradesJson.FileName)) ? null : GradedFolder.Read(Graded);
        var recorded = earlier?.Model?.Due;
        return new(
            new(Named is null ? recorded : Named.In(profile?.Model?.TimeZone ?? dealt.TimeZone)) { IsNamed = Named is not null, OnRecord = recorded, Unread = earlier?.Problems ?? [] },
            []);
    }
}
