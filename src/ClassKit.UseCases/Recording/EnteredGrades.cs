namespace ClassKit.UseCases.Recording;

/// <summary>Grades that are on record now.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Deal">The deal's code.</param>
/// <param name="Students">How many students they are of.</param>
/// <param name="Number">1 for the first grading of the deal, and so on; null if just these grades were on record already.</param>
public sealed record EnteredGrades(string Class, string Deal, int Students, int? Number)
{
    /// <summary>Students who were left out, since they were erased from the record before; 0 or more.</summary>
    public int StillErased { get; init; }
}
