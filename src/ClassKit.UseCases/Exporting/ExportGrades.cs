using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Makes the tables by which schools exchange grades, from the record of a grading.</summary>
public static class ExportGrades
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "grade-exchange";

    /// <summary>Reads the record and makes the tables.</summary>
    /// <param name="dealtFolder">The folder that <c>classkit deal</c> made.</param>
    /// <param name="graded">The folder that <c>classkit grade</c> made.</param>
    /// <param name="exchange">What the school's records know of the class.</param>
    public static Produced Make(string dealtFolder, string graded, GradeExchange exchange)
    {
        ArgumentNullException.ThrowIfNull(exchange);
        if (exchange.Due < exchange.Assigned)
            return Produced.Nothing(new Diagnostic("--due", null, $"It is {exchange.Due:yyyy-MM-dd}, before --assigned", "Name a day on or after the one on which the set was handed out."));
        var dealt = DealtFolder.Read(dealtFolder);
        var grades = GradedFolder.Read(graded);
        if (!dealt.Succeeded || !grades.Succeeded) return Produced.Nothing([.. dealt.Problems, .. grades.Problems]);
        return new(
            [
                OutputFile.OfText("manifest.csv", OneRosterTables.Manifest()),
                OutputFile.OfText("lineItems.csv", OneRosterTables.LineItems(dealt.Model, grades.Model, exchange)),
                OutputFile.OfText("results.csv", OneRosterTables.Results(dealt.Model, grades.Model, exchange)),
            ],
            [$"{grades.Model.Students.Count} results in the tables of OneRoster 1.2 (1EdTech). Students go by the ids of the roster: they must be the school's own. Zip the three tables to hand them on."],
            []);
    }
}
