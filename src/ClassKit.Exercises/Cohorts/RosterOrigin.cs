namespace ClassKit.Exercises.Cohorts;

/// <summary>How a roster's file was understood.</summary>
/// <param name="Taken">The columns that were taken for something, in the order of the file.</param>
/// <param name="LeftAside">The titles of the others.</param>
/// <param name="Ids">Where ids are from.</param>
public sealed record RosterOrigin(IReadOnlyList<TakenColumn> Taken, IReadOnlyList<string> LeftAside, RosterIds Ids)
{
    /// <summary>The sheet of a workbook with several; null where there is nothing to choose.</summary>
    public string? Sheet { get; init; }

    /// <summary>True if the letters were taken to be saved as Windows-1252, since they are not UTF-8: accented ones may be wrong.</summary>
    public bool GuessedLetters { get; init; }

    /// <summary>The rows that a filter or the hand has hidden in a workbook, and that were left out.</summary>
    public int HiddenRows { get; init; }

    /// <summary>
    /// The title of a column that only counts the lines, and is nobody's id therefore; null if there is none.
    /// </summary>
    public string? Counting { get; init; }

    /// <summary>What stands in columns of allergies, which are left aside like others; null if no title speaks of any.</summary>
    public AllergyColumns? Allergies { get; init; }

    /// <summary>The people in the file who are no students of the class: other roles, other classes, marked as gone.</summary>
    public int Others { get; init; }

    /// <summary>What stands in the lines below the students that are nobody's, such as how many there are.</summary>
    public IReadOnlyList<string> Below { get; init; } = [];

    /// <summary>True if every column says by its title what it was taken for, and nothing of the file was left out: <c>First name</c>.</summary>
    public bool IsClear =>
        LeftAside.Count == 0
        && Sheet is null
        && !GuessedLetters
        && HiddenRows == 0
        && Others == 0
        && Below.Count == 0
        && Taken.All(column =>
            Letters(column.Title) is var title && (title == Letters($"{column.As}") || title == $"student{Letters($"{column.As}")}")
        );

    private static string Letters(string title) => string.Concat(title.Where(char.IsLetter)).ToLowerInvariant();

    /// <summary>
    /// True if nothing had to be guessed: the columns are called <c>id</c>, <c>name</c>, <c>email</c> and <c>team</c>, and there are no
    /// others.
    /// </summary>
    public bool IsPlain =>
        Ids == RosterIds.Column
        && LeftAside.Count == 0
        && Sheet is null
        && !GuessedLetters
        && HiddenRows == 0
        && Others == 0
        && Below.Count == 0
        && Taken.All(column =>
            column.As is RosterField.Id or RosterField.Name or RosterField.Email or RosterField.Team
            && column.Title.Equals(column.As.ToString(), StringComparison.OrdinalIgnoreCase)
        );
}
