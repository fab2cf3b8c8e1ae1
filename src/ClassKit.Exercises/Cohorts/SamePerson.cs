using AnyAscii;

namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// Whether what two lists say under one id is surely one person. An id alone does not say so: lists are numbered anew, and a number goes to
/// whoever comes next. Where this is false somebody has to be asked before work of one counts for the other.
/// </summary>
public static class SamePerson
{
    /// <summary>Parts one earlier name from another in <see cref="Student.Formerly"/>.</summary>
    public const char Between = ';';

    /// <summary>
    /// True if the names are the same but for order, capitals, accents and signs, if the list says that the student was called so, or if
    /// both have one address from which the id is not made.
    /// </summary>
    /// <param name="earlier">Whoever had the id.</param>
    /// <param name="now">Whoever has it.</param>
    public static bool IsSurely(Student earlier, Student now)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(now);
        return HasSameName(earlier, now)
            || now.Formerly?.Split(Between).Any(name => Key(name) == Key(earlier.Name)) == true
            || (HasSameAddress(earlier, now) && StudentId.Of(now.Email!.Split('@')[0]) != now.Id);
    }

    /// <summary>True if the names are the same but for order, capitals, accents and signs.</summary>
    public static bool HasSameName(Student one, Student other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return Key(one.Name) == Key(other.Name);
    }

    /// <summary>True if both have an address, and it is the same.</summary>
    public static bool HasSameAddress(Student one, Student other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.Email is { Length: > 0 } address && address.Equals(other.Email, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>
    /// For those of a list whose ids an earlier one does not know, who of those it no longer names they seem to be: by address, else by
    /// name, and only where no third one could be meant. It is a proposal and decides nothing.
    /// </summary>
    /// <param name="gone">Those whom only the earlier list names, by their ids.</param>
    /// <param name="come">Those whom only the new one names.</param>
    public static IReadOnlyList<(Student Earlier, Student Now)> UnderOtherIds(IReadOnlyList<Student> gone, IReadOnlyList<Student> come)
    {
        ArgumentNullException.ThrowIfNull(gone);
        ArgumentNullException.ThrowIfNull(come);
        var byAddress = Alone(gone, come, HasSameAddress);
        return
        [
            .. byAddress,
            .. Alone(
                [.. gone.Except(byAddress.Select(pair => pair.Earlier))],
                [.. come.Except(byAddress.Select(pair => pair.Now))],
                HasSameName
            ),
        ];
    }

    private static List<(Student Earlier, Student Now)> Alone(
        IReadOnlyList<Student> gone,
        IReadOnlyList<Student> come,
        Func<Student, Student, bool> isLike
    ) =>
        [
            .. from now in come
            let like = gone.Where(earlier => isLike(earlier, now)).ToList()
            where like.Count == 1 && come.Count(other => isLike(like[0], other)) == 1
            select (like[0], now),
        ];

    private static string Key(string name) =>
        string.Join(
            ' ',
            string.Concat(name.Transliterate().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : ' '))
                .ToLowerInvariant()
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Order(StringComparer.Ordinal)
        )
            is { Length: > 0 } key
            ? key
            : name;
}
