using ClassKit.Content.Diagnostics;
using ClassKit.Records.Gradings;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Recording;

namespace ClassKit.UseCases.Difficulty;

/// <summary>Where the answers of earlier classes lie.</summary>
/// <param name="Record">The record, or the teaching folder that it lies in; null for none.</param>
/// <param name="Graded">Folders that grading made. A deal that is on record already is not taken twice.</param>
/// <param name="Now">When, for the name of a backup that a newer program makes of the record.</param>
public sealed record PastPaths(string? Record, IReadOnlyList<string> Graded, DateTimeOffset Now)
{
    /// <summary>True if nothing is named.</summary>
    public bool IsNone => Record is null && Graded.Count == 0;

    /// <summary>How hard everything proved there, or everything that is wrong with it.</summary>
    public Reading<PastDifficulty> Read()
    {
        List<Diagnostic> problems = [];
        var works = new List<PastWork>();
        if (Record is not null)
        {
            var opened = RecordPlace.Open(Record, Now, mayBegin: false);
            problems.AddRange(opened.Problems);
            using var record = opened.Model;
            if (record is not null)
                works.AddRange(PastWorks.Of(record.Read(PastAnswerRow.All)));
        }
        var known = works.Select(work => work.Deal).ToHashSet(StringComparer.Ordinal);
        foreach (var folder in Graded)
        {
            var grades = GradedFolder.Read(folder, dealt: null);
            problems.AddRange(grades.Problems);
            if (grades.Model is { } model && known.Add(PastWorks.DealOf(model)))
                works.AddRange(PastWorks.Of(model));
        }
        return problems.Count == 0 ? new(PastDifficulty.Of(works), []) : new(null, problems);
    }
}
