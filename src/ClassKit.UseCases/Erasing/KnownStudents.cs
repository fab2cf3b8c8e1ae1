using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Erasing;

/// <summary>Who is named in the class lists and deals of a teaching folder.</summary>
internal static class KnownStudents
{
    /// <summary>All of them, some perhaps more than once.</summary>
    public static IReadOnlyList<Student> In(IEnumerable<string> lists, IEnumerable<DealtClass> deals) =>
        [
            .. lists.SelectMany(file => RosterReader.Read(Library.OfPaths().At(file)).Model?.Students ?? []),
            .. deals.SelectMany(deal => deal.Students).Select(seat => seat.Who),
        ];
}
