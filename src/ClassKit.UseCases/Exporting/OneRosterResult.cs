namespace ClassKit.UseCases.Exporting;

/// <summary>A row of <c>results.csv</c>: what a student has of a line item.</summary>
/// <param name="LineItem">The line item's id.</param>
/// <param name="Student">The student's id.</param>
/// <param name="Class">The class's id.</param>
/// <param name="State">One of the standard's words for how far it is.</param>
/// <param name="Score">Points; nothing where there are none.</param>
/// <param name="Day">When it was scored.</param>
internal sealed record OneRosterResult(string LineItem, string Student, string Class, string State, string Score, DateOnly Day)
{
    public static readonly string[] Columns =
    [
        .. OneRosterColumns.Common,
        "lineItemSourcedId",
        "studentSourcedId",
        "scoreStatus",
        "score",
        "scoreDate",
        "comment",
        "textScore",
        "classSourcedId",
        "inProgress",
        "incomplete",
        "late",
        "missing",
    ];

    /// <summary>The grade in words or letters.</summary>
    public string Text { get; init; } = "";

    /// <summary>True while something in it waits to be decided.</summary>
    public bool IsIncomplete { get; init; }

    public bool IsLate { get; init; }

    public bool IsMissing { get; init; }

    public string[] Row =>
        [
            $"{LineItem}-{Student}",
            "",
            "",
            LineItem,
            Student,
            State,
            Score,
            OneRosterColumns.Of(Day),
            "",
            Text,
            Class,
            OneRosterColumns.Of(false),
            OneRosterColumns.Of(IsIncomplete),
            OneRosterColumns.Of(IsLate),
            OneRosterColumns.Of(IsMissing),
        ];
}
