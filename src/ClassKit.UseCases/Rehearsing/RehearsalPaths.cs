using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>Where what rehearsing takes lies on disk.</summary>
/// <param name="Folder">The lesson's folder, or one of exercises.</param>
/// <param name="Students">How many to invent, 2 to <see cref="RehearseLesson.MostStudents"/>.</param>
/// <param name="Wish">What is dealt to them.</param>
public sealed record RehearsalPaths(string Folder, int Students, DealWish Wish)
{
    /// <summary>All that rehearsing takes, or everything that is wrong with it.</summary>
    public Reading<RehearsalRequest> Read()
    {
        var set = PracticeSet.Read(Folder, Wish.Set, Wish.Seed);
        return set.Succeeded ? new(new(set.Model, Students, Wish), []) : new(null, set.Problems);
    }

    /// <summary>The files of the rehearsal.</summary>
    public static Produced Write(RehearsalMade rehearsal) =>
        new(RehearsalFiles.Of(rehearsal), RehearsalFiles.Notes(rehearsal), []) { Open = [RehearsalFiles.Report] };
}
