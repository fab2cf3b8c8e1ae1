using ClassKit.Exercises.Cohorts;

namespace ClassKit.UseCases.Recording;

/// <summary>A term that is on record now.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Title">What the term is called.</param>
/// <param name="Works">How many works it has.</param>
/// <param name="Marks">How many marks from the bench and from the table of marks.</param>
public sealed record EnteredTerm(string Class, string Title, int Works, int Marks)
{
    /// <summary>Students who were left out, since they were erased from the record before; 0 or more.</summary>
    public int StillErased { get; init; }

    /// <summary>Marks that went off the record since the files have them no longer; 0 or more.</summary>
    public int TakenOff { get; init; }

    /// <summary>The titles of works that have marks on record and none in the files: they stay.</summary>
    public IReadOnlyList<string> Unfiled { get; init; } = [];

    /// <summary>Students who were in the class and are on its list no more.</summary>
    public IReadOnlyList<Student> Left { get; init; } = [];
}
