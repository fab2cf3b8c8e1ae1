using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Exporting;

/// <summary>Makes the tables by which schools exchange grades, from the record of a grading.</summary>
public static class ExportGrades
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "grade-exchange";

    /// <summary>Makes the tables.</summary>
    /// <returns>The tables, or what is wrong with the days.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<GradeTables> Run(GradeExchangeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var (grades, exchange) = (request.Grades, request.Exchange);
        return DaysProblem(exchange) is { } problem
            ? new(null, [problem])
            : new(
                new(
                    OneRosterTables.Manifest("lineItems", "results"),
                    OneRosterTables.LineItems(grades, exchange),
                    OneRosterTables.Results(grades.Dealt, run.Each(RunStep.Tabulating, grades.Students), exchange),
                    grades.Students.Count
                ),
                []
            );
    }

    /// <summary>The request for folders, or everything that is wrong with what is in them.</summary>
    /// <param name="dealtFolder">A folder that dealing made.</param>
    /// <param name="graded">The folder that grading made of it.</param>
    /// <param name="exchange">What the school's records know of the class.</param>
    public static Reading<GradeExchangeRequest> Read(string dealtFolder, string graded, GradeExchange exchange)
    {
        ArgumentNullException.ThrowIfNull(exchange);
        if (DaysProblem(exchange) is { } problem)
            return new(null, [problem]);
        var dealt = DealtFolder.Read(dealtFolder);
        var grades = GradedFolder.Read(graded, dealt.Model);
        return dealt.Succeeded && grades.Succeeded
            ? new(new(grades.Model, exchange), [])
            : new(null, [.. dealt.Problems, .. grades.Problems]);
    }

    /// <summary>The files of the tables.</summary>
    public static Produced Write(GradeTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        return new(
            [
                OutputFile.OfText("manifest.csv", tables.Manifest),
                OutputFile.OfText("lineItems.csv", tables.LineItems),
                OutputFile.OfText("results.csv", tables.Results),
            ],
            [new Note.Tabulated(tables.Students)],
            []
        )
        {
            Open = ["results.csv"],
        };
    }

    private static Diagnostic? DaysProblem(GradeExchange exchange) =>
        exchange.Due >= exchange.Assigned
            ? null
            : new(
                "due day",
                null,
                $"It is {exchange.Due:yyyy-MM-dd}, before the set was handed out on {exchange.Assigned:yyyy-MM-dd}",
                "Name a day on or after that."
            )
            {
                Remedy = Remedy.NameOtherDays,
            };
}
