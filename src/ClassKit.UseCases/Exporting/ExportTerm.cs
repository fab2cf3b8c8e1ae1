using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Terms.Grades;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Exporting;

/// <summary>
/// Makes the tables by which schools exchange the results of a whole term: session, categories, a line item for each work and one for the
/// grade, the scale, and everybody's results.
/// </summary>
public static class ExportTerm
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "term-exchange";

    /// <summary>Makes the tables.</summary>
    /// <returns>The tables, or what is wrong with the days.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<TermTables> Run(TermExchangeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var (term, exchange) = (request.Term, request.Exchange);
        if (exchange.Ends < exchange.Begins)
            return new(
                null,
                [
                    new(
                        "last day",
                        null,
                        $"It is {exchange.Ends:yyyy-MM-dd}, before the term begins on {exchange.Begins:yyyy-MM-dd}",
                        "Name a day on or after that."
                    ),
                ]
            );
        var tables = new OneRosterTerm(term, exchange);
        var results = tables.Results(TermGrader.Grade(term, run.Each(RunStep.Tabulating, term.Class.Students)));
        return new(
            new(
                [
                    (
                        "manifest.csv",
                        OneRosterTables.Manifest(
                            "academicSessions",
                            "categories",
                            "lineItems",
                            "lineItemScoreScales",
                            "results",
                            "scoreScales"
                        )
                    ),
                    ("academicSessions.csv", tables.Sessions()),
                    ("categories.csv", tables.Categories()),
                    ("lineItems.csv", tables.LineItems()),
                    ("scoreScales.csv", tables.Scale()),
                    ("lineItemScoreScales.csv", tables.ScaleOfGrade()),
                    ("results.csv", CsvText.Of(results)),
                ],
                results.Count - 1
            )
            {
                Ungraded = [.. term.Assignments.Where(work => work.OutOf is null).Select(work => work.Title)],
            },
            []
        );
    }

    /// <summary>The files of the tables.</summary>
    public static Produced Write(TermTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        return new(
            [.. tables.Files.Select(file => OutputFile.OfText(file.Name, file.Text))],
            [
                new Note.Tabulated(tables.Results),
                .. tables.Ungraded.Count == 0 ? (IEnumerable<Note>)[] : [new Note.UngradedLeftOut(tables.Ungraded)],
            ],
            []
        )
        {
            Open = ["results.csv"],
        };
    }
}
