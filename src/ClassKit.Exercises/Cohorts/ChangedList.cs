namespace ClassKit.Exercises.Cohorts;

/// <summary>Whether a class list is that of the same class as an earlier one: in a term students come and go.</summary>
public static class ChangedList
{
    /// <summary>
    /// True if most of those on the earlier list are on this one; fewer are another class, or one that was mistaken for it.
    /// </summary>
    /// <param name="earlier">The ids of those on the earlier list.</param>
    /// <param name="now">The class list.</param>
    public static bool IsOfSameClass(IReadOnlyCollection<string> earlier, IReadOnlyList<Student> now)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(now);
        var there = now.Select(student => student.Id).ToHashSet();
        return earlier.Count(there.Contains) * 2 > earlier.Count;
    }
}
