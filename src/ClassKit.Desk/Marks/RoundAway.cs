using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Marks;

/// <summary>
/// Who was absent from a round, or excused: a word in the table of the term that counts it, so that the grade and the round say the same.
/// </summary>
/// <param name="Term">The term.</param>
/// <param name="Work">The work of it that is this round.</param>
public sealed record RoundAway(TermEntry Term, PlannedWork Work)
{
    /// <summary>The table of the term.</summary>
    public TypedWork Typed { get; } = new(Term, Work);

    /// <summary>What an absence comes to there.</summary>
    public ClassKit.Terms.Rules.AbsenceRule Absence => Term.Plan.Model!.Rule.Absence;

    /// <summary>The first term that counts a round; null where none does, or where it has no table for such words.</summary>
    public static RoundAway? Of(TeachingFolder folder, ClassEntry known, Round round)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(round);
        return TermEntry
            .Of(folder, known)
            .SelectMany(term =>
                (term.Plan.Model?.Works ?? [])
                    .Where(work => work.Graded.Any(graded => Path.GetFullPath(graded) == round.Graded))
                    .Select(work => new RoundAway(term, work))
            )
            .FirstOrDefault(away => away.Typed.HasTable);
    }

    /// <summary>A round with the words of whoever was away: they are not waited for.</summary>
    internal static RoundState In(Visit visit, ClassEntry known, RoundState state)
    {
        return state with
        {
            Away = visit.Desk.Kept.Get($"away {state.Round.Folder}", visit.Folder.Stamp(), () =>
                Of(visit.Folder, known, state.Round)?.Typed.InPlace(1) ?? new Dictionary<string, string>()
            ),
        };
    }

    /// <summary>Keeps the words that were chosen; whoever was not asked about stays as they are.</summary>
    /// <param name="stamp">The table as the instructor saw it.</param>
    /// <param name="chosen">What was chosen for a student; null for whoever was not asked about.</param>
    /// <returns>Why nothing was kept; empty if it was.</returns>
    public IReadOnlyList<Diagnostic> Keep(string stamp, Func<string, string?> chosen)
    {
        var cells = new[] { Typed.Cells(1), Typed.Cells(2) };
        return Typed.Keep(stamp, (student, sitting) =>
            (sitting == 1 ? chosen(student) : null) ?? cells[sitting - 1].GetValueOrDefault(student, "")
        );
    }
}
