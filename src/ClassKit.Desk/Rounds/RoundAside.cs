using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;

namespace ClassKit.Desk.Rounds;

/// <summary>Takes a round out of the way, and puts it back: its folder is moved, and nothing in it changes.</summary>
internal static class RoundAside
{
    /// <summary>The terms that count a round by what was judged of it: they would not hold without it.</summary>
    public static IReadOnlyList<TermEntry> CountedIn(TeachingFolder folder, ClassEntry known, Round round) =>
        [
            .. TermEntry
                .Of(folder, known)
                .Where(term =>
                    term.Plan.Model is { } plan
                        ? plan.Works.Any(work => work.Graded.Any(folder => Path.GetFullPath(folder) == round.Graded))
                        : Names(term, round)
                ),
        ];

    /// <summary>A term with a mistake in it is no reason to take away what it counts.</summary>
    private static bool Names(TermEntry term, Round round) =>
        OwnText.Read(term.File) is { } text
        && text.Text.Contains($"{round.Name}/{Path.GetFileName(round.Graded)}", StringComparison.Ordinal);

    /// <summary>Takes it out of the way.</summary>
    /// <returns>Why not; null if it is.</returns>
    public static Diagnostic? Take(Visit visit, ClassEntry known, Round round)
    {
        if (CountedIn(visit.Folder, known, round) is [var term, ..])
            return new(
                round.Name,
                null,
                $"{term.Title} counts this round",
                "Take its line out of that term first: change the term’s text."
            );
        return Move(visit, round.Folder, visit.Folder.AsideOf(known, round.Name));
    }

    /// <summary>Puts it back.</summary>
    /// <returns>Why not; null if it is there.</returns>
    public static Diagnostic? Return(Visit visit, ClassEntry known, string named) =>
        visit.Folder.RoundsAside(known).FirstOrDefault(round => round.Name == named) is { } round
            ? Move(visit, round.Folder, visit.Folder.RoundPlace(known, round.Name))
            : new(named, null, "No round of that name was taken away", "It may have been put back already.");

    /// <summary>Moves a folder of rounds to a place where there is none yet.</summary>
    /// <returns>Why not; null if it lies there.</returns>
    public static Diagnostic? Move(Visit visit, string from, string to)
    {
        var name = Path.GetFileName(from);
        if (visit.Desk.Jobs.Open.Count > 0)
            return new(name, null, "Work is going on that may be about this round", "Wait until it is over, and try again.");
        if (Path.Exists(to))
            return new(name, null, "There is a round of that name there already", "Rename one of the two folders.");
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            Directory.Move(from, to);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(
                name,
                null,
                $"It could not be moved: {failure.Message}",
                "Close the programs that have files of it open, and try again."
            );
        }
    }
}
