using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Erasing;

/// <summary>What lists the whole class in a folder of ours and can be made anew from what lies there, without a student.</summary>
/// <param name="Files">What takes the place of the old ones.</param>
/// <param name="Gone">Old ones that nothing takes the place of.</param>
internal sealed record MadeAnew(IReadOnlyList<OutputFile> Files, IReadOnlySet<string> Gone)
{
    /// <summary>Nothing.</summary>
    public static MadeAnew Nothing { get; } = new([], new HashSet<string>());

    /// <summary>What can be made anew there.</summary>
    /// <param name="own">The folder.</param>
    /// <param name="who">The student.</param>
    /// <param name="deals">All deals at hand: pages of grades need what was dealt.</param>
    public static MadeAnew Of(OwnOutput own, Student who, IReadOnlyList<DealtClass> deals)
    {
        if (own.Files.Has(DealtJson.FileName) && DealtFolder.Read(own.Root).Model is { } dealt)
            return OfDeal(own, who, dealt);
        if (!own.Files.Has(GradesJson.FileName) || GradedFolder.Read(own.Root, dealt: null).Model?.Dealt is not { } recorded)
            return Nothing;
        var deal = deals.FirstOrDefault(one => one.Identity is { } identity && identity == recorded.Identity);
        return GradedFolder.Read(own.Root, deal).Model is { } grades ? OfGrades(own, who, grades, isWhole: deal is not null) : Nothing;
    }

    private static MadeAnew OfDeal(OwnOutput own, Student who, DealtClass dealt)
    {
        var without = dealt with { Students = [.. dealt.Students.Where(seat => seat.Who.Id != who.Id)] };
        return without.Students.Count == dealt.Students.Count
            ? Nothing
            : Between(own, DealFiles.OfClass(dealt), without.Students.Count == 0 ? [] : DealFiles.OfClass(without));
    }

    private static MadeAnew OfGrades(OwnOutput own, Student who, ClassGrades grades, bool isWhole)
    {
        if (grades.Students.All(student => student.Who.Id != who.Id))
            return Nothing;
        var without = GradesWithout.Of(grades, new HashSet<string> { who.Id });
        // Without what was dealt no page can be made, but the grades themselves lie in their own file.
        return Between(own, ClassFiles(grades, isWhole), without.Students.Count == 0 ? [] : ClassFiles(without, isWhole));
    }

    private static IReadOnlyList<OutputFile> ClassFiles(ClassGrades grades, bool isWhole) =>
        isWhole
            ? GradeFiles.OfClass(new(grades, ClassSummarizer.Summarize(grades), SettledDeadline.None))
            : [new(GradesJson.FileName, stream => GradesJson.Write(stream, grades))];

    /// <summary>What the instructor has changed since stays theirs; the tables that programs read do not.</summary>
    private static MadeAnew Between(OwnOutput own, IReadOnlyList<OutputFile> before, IReadOnlyList<OutputFile> after)
    {
        bool IsOurs(string path) =>
            own.Files.Has(path) && (path is DealtJson.FileName or GradesJson.FileName || !own.Files.At(path).IsChanged);
        var old = before.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        List<OutputFile> files = [.. after.Where(file => IsOurs(file.Path) || !old.Contains(file.Path))];
        return new(files, old.Where(IsOurs).Except(files.Select(file => file.Path)).ToHashSet(StringComparer.Ordinal));
    }
}
