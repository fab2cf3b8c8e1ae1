using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Grading.Results;

namespace ClassKit.Desk.Returns;

/// <summary>
/// Files of a round that count for nobody, and what can be done with them: say whose one is, put it where it belongs, or set it aside. None
/// is ever thrown away.
/// </summary>
internal static class UnclearFiles
{
    /// <summary>The file of a name among them.</summary>
    public static AccountedFile? Find(RoundState state, string named) => state.Unclear.FirstOrDefault(one => one.File == named);

    /// <summary>The other round of the class that a workbook was dealt in; null if none of them.</summary>
    public static RoundState? HomeOf(Visit visit, ClassEntry known, RoundState state, AccountedFile file) =>
        file.Other?.Code is { } code
            ? Others(visit.Folder, known, state.Round)
                .Select(visit.Look)
                .OfType<RoundState>()
                .FirstOrDefault(other => other.Dealt.Identity?.Code == code)
            : null;

    /// <summary>The other rounds of the class, the latest first.</summary>
    public static IEnumerable<Round> Others(TeachingFolder folder, ClassEntry known, Round round) =>
        folder.Rounds(known).Where(other => other.Name != round.Name);

    /// <summary>Sets the file aside that the form names.</summary>
    /// <returns>Why not; null if it was.</returns>
    public static Diagnostic? SetAside(Visit visit, RoundState state) =>
        Find(state, visit.Typed("file")) is { } file
            ? Move(state, file, state.Round.SetAside)
            : new(visit.Typed("file"), null, "There is no such file among those that count for nobody", "It may have been moved already.");

    /// <summary>Gives a file a name that says whose it is; nothing else of it changes.</summary>
    /// <returns>Why not; null if it was.</returns>
    public static Diagnostic? Name(RoundState state, AccountedFile file, string student) => Moved(state, file, from =>
        {
            var plain = Path.GetFileName(from);
            if (plain.StartsWith(student + " ", StringComparison.Ordinal))
                return;
            // The very same under that name counts already: this one has nothing to add.
            if (!HandIn.Keep(from, state.Round.Returned, $"{student} {plain}"))
                File.Delete(from);
        });

    /// <summary>Puts a file into another folder; one of the same name there stays beside it.</summary>
    /// <returns>Why not; null if it was.</returns>
    public static Diagnostic? Move(RoundState state, AccountedFile file, string into) => Moved(state, file, from =>
        {
            Directory.CreateDirectory(into);
            if (!HandIn.Keep(from, into, Path.GetRelativePath(state.Round.Returned, from).Replace('\\', '/')))
                File.Delete(from);
        });

    private static Diagnostic? Moved(RoundState state, AccountedFile file, Action<string> move)
    {
        try
        {
            if (ApartFile.Find(state.Round, file.File) is not { } found)
                return new(
                    file.File,
                    null,
                    "It does not lie there any more",
                    "Mark what came back anew: the list of what counts for nobody is made again then."
                );
            move(Path.Combine(state.Round.Returned, found));
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(file.File, null, $"It could not be moved: {failure.Message}", "Close the program that has it open, and try again.");
        }
    }
}
