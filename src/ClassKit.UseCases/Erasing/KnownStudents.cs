using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Erasing;

/// <summary>Who is named in the class lists and deals of a teaching folder.</summary>
internal static class KnownStudents
{
    private static readonly string[] Endings = [".csv", ".tsv", ".xlsx", ".ods"];

    /// <summary>True of a class list, or of one that was a class's before.</summary>
    public static bool IsList(string file) =>
        Path.GetFileName(file).Contains("roster", StringComparison.OrdinalIgnoreCase)
        && Endings.Contains(Path.GetExtension(file).ToLowerInvariant());

    /// <summary>All of them, some perhaps more than once.</summary>
    public static IReadOnlyList<Student> In(IEnumerable<string> files, IEnumerable<DealtClass> deals) =>
        [
            .. files.Where(IsList).SelectMany(file => RosterReader.Read(Library.OfPaths().At(file)).Model?.Students ?? []),
            .. deals.SelectMany(deal => deal.Students).Select(seat => seat.Who),
        ];
}
