using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Choosing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Practising;

/// <summary>Where what practice after grading takes lies on disk.</summary>
/// <param name="Dealt">A folder that dealing made.</param>
/// <param name="Graded">The folder that grading made of it.</param>
/// <param name="Wish">For whom, and how much.</param>
public sealed record FollowUpPaths(string Dealt, string Graded, FollowUpWish Wish)
{
    /// <summary>A lesson or a folder of exercises to draw from besides those dealt; null for none.</summary>
    public string? Pool { get; init; }

    /// <summary>The output folder: practice that it holds is never replaced by other practice. Null for a new one.</summary>
    public string? Into { get; init; }

    /// <summary>All that the practice takes, or everything that is wrong with it.</summary>
    public Reading<FollowUpRequest> Read()
    {
        var dealt = DealtFolder.Read(Dealt);
        var grades = GradedFolder.Read(Graded, dealt.Model);
        var pool = Pool is null ? null : PracticeSet.Read(Pool, SetWish.None, Wish.Seed);
        if (!dealt.Succeeded || !grades.Succeeded || pool is { Succeeded: false })
            return new(null, [.. dealt.Problems, .. grades.Problems, .. pool?.Problems ?? []]);
        var earlier = EarlierDeal.In(Into);
        return earlier.Succeeded
            ? new(
                new(dealt.Model, grades.Model, Wish)
                {
                    Pool = pool?.Model!.Exercises ?? [],
                    Earlier = earlier.Model,
                    Source = Dealt,
                },
                []
            )
            : new(null, earlier.Problems);
    }

    /// <summary>The files of the practice.</summary>
    public static Produced Write(FollowUpMade made) =>
        new(FollowUpFiles.Of(made), FollowUpFiles.Notes(made), []) { Open = [FollowUpFiles.Overview] };
}
