using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Exporting;

/// <summary>A row of <c>lineItems.csv</c>: something that every student of a class earns points for.</summary>
/// <param name="Id">Its own.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Assigned">When it was set.</param>
/// <param name="Due">When it is due, not before it was set.</param>
/// <param name="OutOf">The most that can be earned; the least is nothing.</param>
internal sealed record OneRosterLineItem(string Id, string Title, DateOnly Assigned, DateOnly Due, decimal OutOf)
{
    public static readonly string[] Columns =
    [
        .. OneRosterColumns.Common,
        "title",
        "description",
        "assignDate",
        "dueDate",
        "classSourcedId",
        "categorySourcedId",
        "academicSessionSourcedId",
        "resultValueMin",
        "resultValueMax",
        "schoolSourcedId",
    ];

    /// <summary>What it consists of.</summary>
    public string Description { get; init; } = "";

    public required string Class { get; init; }

    public required string Category { get; init; }

    public required string Session { get; init; }

    public required string School { get; init; }

    public string[] Row =>
        [
            Id,
            "",
            "",
            Title,
            Description,
            OneRosterColumns.Of(Assigned),
            OneRosterColumns.Of(Due),
            Class,
            Category,
            Session,
            "0",
            CsvText.Points(OutOf),
            School,
        ];
}
