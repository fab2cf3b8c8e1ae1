using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Practising;

/// <summary>Where what making practice takes lies on disk.</summary>
/// <param name="Folder">The lesson's folder, or one of exercises.</param>
/// <param name="Wish">Which exercises are wanted; <see cref="SetWish.None"/> for all.</param>
/// <param name="Seed">Decides every draw.</param>
public sealed record PracticePaths(string Folder, SetWish Wish, ulong Seed)
{
    /// <summary>The students; null for one page that is anyone's.</summary>
    public string? Roster { get; init; }

    /// <summary>A folder that dealing made, of whose numbers none may come; null if none was dealt yet.</summary>
    public string? ApartFrom { get; init; }

    /// <summary>All that making practice takes, or everything that is wrong with it.</summary>
    public Reading<PracticeRequest> Read()
    {
        var set = PracticeSet.Read(Folder, Wish, Seed);
        var roster = Roster is null ? null : RosterReader.Read(Roster);
        var before = ApartFrom is null ? null : DealtFolder.Read(ApartFrom);
        return set.Succeeded && roster is not { Succeeded: false } && before is not { Succeeded: false }
            ? new(
                new(set.Model, Seed)
                {
                    Roster = roster?.Model,
                    Paper = before?.Model?.Paper,
                    Avoid = before is null ? NumbersToAvoid.None : NumbersToAvoid.OfAnyone(before.Model!),
                },
                []
            )
            : new(null, [.. set.Problems, .. roster?.Problems ?? [], .. before?.Problems ?? []]);
    }

    /// <summary>The pages.</summary>
    public static Produced Write(PracticeMade practice)
    {
        var files = PracticeFiles.Of(practice);
        return new(files, PracticeFiles.Notes(practice), []) { Open = [files[0].Path] };
    }
}
