using System.Runtime.CompilerServices;

namespace ClassKit.Exercises.Dealing;

/// <summary>Finds what a student was dealt by the student's id: every page of a large class asks for one of many.</summary>
internal static class Seats
{
    // Beside the list and not in the deal, which is copied with other lists and compared field by field.
    private static readonly ConditionalWeakTable<IReadOnlyList<DealtStudent>, Dictionary<string, DealtStudent>> Known = [];

    /// <summary>What was dealt to the student of an id; null if nobody of the list has it.</summary>
    public static DealtStudent? Find(IReadOnlyList<DealtStudent> students, string id) =>
        Known.GetValue(students, All).GetValueOrDefault(id);

    private static Dictionary<string, DealtStudent> All(IReadOnlyList<DealtStudent> students)
    {
        var seats = new Dictionary<string, DealtStudent>(students.Count, StringComparer.Ordinal);
        foreach (var student in students)
            seats.TryAdd(student.Who.Id, student);
        return seats;
    }
}
