using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Practising;

/// <summary>What making practice takes.</summary>
/// <param name="Set">What is practised.</param>
/// <param name="Seed">Decides every draw. The same seed as a deal's still gives other numbers.</param>
public sealed record PracticeRequest(PracticeSet Set, ulong Seed)
{
    /// <summary>The students, each with a page; null for one page that is anyone's.</summary>
    public Roster? Roster { get; init; }

    /// <summary>What the class prints on; null where nothing is said.</summary>
    public Paper? Paper { get; init; }

    /// <summary>Numbers of which none may come.</summary>
    public NumbersToAvoid Avoid { get; init; } = NumbersToAvoid.None;
}
