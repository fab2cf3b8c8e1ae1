using System.Diagnostics;
using System.Globalization;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Wording.Dealing;

/// <summary>Why a deal is another one than students hold.</summary>
public static class DealDifferenceWords
{
    /// <summary>A short clause.</summary>
    public static string Of(DealDifference difference) =>
        difference switch
        {
            DealDifference.WithoutCode => "it was dealt before deals had codes",
            DealDifference.Lesson fact => $"the lesson is {fact.Wanted}, and was {fact.Held}",
            DealDifference.Title fact => $"its title is “{fact.Wanted}”, and was “{fact.Held}”",
            DealDifference.Cohort fact => $"the class is “{fact.Wanted}”, and was “{fact.Held}”",
            DealDifference.Seed fact => string.Create(CultureInfo.InvariantCulture, $"the seed is {fact.Wanted}, and was {fact.Held}"),
            DealDifference.Layout => "sheets are laid out in another way",
            DealDifference.Purpose => "it is for another purpose",
            DealDifference.Due fact =>
                $"it is {When(fact.Wanted)}, and was {When(fact.Held)} (another moment can be named when it is graded)",
            DealDifference.Removed fact => $"without {List(fact.Ids)}",
            DealDifference.Added fact => $"with {List(fact.Ids)} besides",
            DealDifference.Changed fact => $"{List(fact.Ids)} {(fact.Ids.Count == 1 ? "has" : "have")} been changed since",
            DealDifference.Order => "exercises are in another order",
            DealDifference.Choice => "sets of exercises are chosen in another way",
            DealDifference.Marking => "the marking scheme has changed",
            DealDifference.StudentsGone fact => $"the roster lacks {List(fact.Ids)}",
            DealDifference.Renamed fact => $"{fact.Id} is called {fact.Wanted}, and was called {fact.Held}",
            _ => throw new UnreachableException($"No words for {difference}."),
        };

    private static string When(DueMoment? due) => due is null ? "to come at any time" : $"due {due.Words}";

    private static string List(IReadOnlyList<string> ids) => string.Join(", ", ids);
}
