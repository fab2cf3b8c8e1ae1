using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Choosing;

/// <summary>Different sets of equal weight for the students of a class.</summary>
/// <param name="Sets">The ids of each student's exercises, by student id.</param>
/// <param name="Exercises">Every exercise that is in a set, in the pool's order.</param>
/// <param name="Different">How many sets differ.</param>
/// <param name="Points">What every set is worth.</param>
/// <param name="LeastMinutes">How long the shortest set takes.</param>
/// <param name="MostMinutes">How long the longest set takes.</param>
public sealed record Spread(
    IReadOnlyDictionary<string, IReadOnlyList<string>> Sets, IReadOnlyList<Exercise> Exercises, int Different, decimal Points, int LeastMinutes, int MostMinutes);
