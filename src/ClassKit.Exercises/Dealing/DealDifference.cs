using ClassKit.Exercises.Deadlines;

namespace ClassKit.Exercises.Dealing;

/// <summary>
/// One thing that makes a deal that is wanted another one than the deal that students hold. The set is closed: each has its words in
/// Wording.
/// </summary>
public abstract record DealDifference
{
    private DealDifference() { }

    /// <summary>The held deal has no identity: it was dealt before deals had any.</summary>
    public sealed record WithoutCode : DealDifference;

    /// <summary>It is of another lesson.</summary>
    /// <param name="Held">The lesson's id in the deal that students hold.</param>
    /// <param name="Wanted">In the one that is wanted.</param>
    public sealed record Lesson(string Held, string Wanted) : DealDifference;

    /// <summary>Its lesson has another title.</summary>
    /// <param name="Held">In the deal that students hold.</param>
    /// <param name="Wanted">In the one that is wanted.</param>
    public sealed record Title(string Held, string Wanted) : DealDifference;

    /// <summary>It is of another class.</summary>
    /// <param name="Held">The class's name in the deal that students hold.</param>
    /// <param name="Wanted">In the one that is wanted.</param>
    public sealed record Cohort(string Held, string Wanted) : DealDifference;

    /// <summary>It is drawn from another seed.</summary>
    /// <param name="Held">In the deal that students hold.</param>
    /// <param name="Wanted">In the one that is wanted.</param>
    public sealed record Seed(ulong Held, ulong Wanted) : DealDifference;

    /// <summary>Its sheets are laid out in another way.</summary>
    public sealed record Layout : DealDifference;

    /// <summary>It is for another purpose.</summary>
    public sealed record Purpose : DealDifference;

    /// <summary>It is due at another moment.</summary>
    /// <param name="Held">In the deal that students hold; null for at any time.</param>
    /// <param name="Wanted">In the one that is wanted; null for at any time.</param>
    public sealed record Due(DueMoment? Held, DueMoment? Wanted) : DealDifference;

    /// <summary>Exercises are gone.</summary>
    /// <param name="Ids">Which.</param>
    public sealed record Removed(IReadOnlyList<string> Ids) : DealDifference;

    /// <summary>Exercises have come.</summary>
    /// <param name="Ids">Which.</param>
    public sealed record Added(IReadOnlyList<string> Ids) : DealDifference;

    /// <summary>Exercises are other than they were.</summary>
    /// <param name="Ids">Which.</param>
    public sealed record Changed(IReadOnlyList<string> Ids) : DealDifference;

    /// <summary>The same exercises in another order.</summary>
    public sealed record Order : DealDifference;

    /// <summary>Sets of exercises are chosen in another way.</summary>
    public sealed record Choice : DealDifference;

    /// <summary>The marking scheme has changed.</summary>
    public sealed record Marking : DealDifference;

    /// <summary>Students are gone from the roster.</summary>
    /// <param name="Ids">Who.</param>
    public sealed record StudentsGone(IReadOnlyList<string> Ids) : DealDifference;

    /// <summary>A student has another name.</summary>
    /// <param name="Id">Who.</param>
    /// <param name="Held">The name in the deal that students hold.</param>
    /// <param name="Wanted">In the roster.</param>
    public sealed record Renamed(string Id, string Held, string Wanted) : DealDifference;
}
