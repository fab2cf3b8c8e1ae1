using ClassKit.Exercises.Dealing;

namespace ClassKit.UseCases.Practising;

/// <summary>Practice was made.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Dealt">Whose numbers are which.</param>
/// <param name="Shared">Exercises with too few variants for all.</param>
/// <param name="LeftOut">Exercises of the set that are not practised.</param>
public sealed record PracticeMade(
    PracticeRequest Request,
    DealtClass Dealt,
    IReadOnlyList<SharedVariants> Shared,
    IReadOnlyList<NotPractised> LeftOut
);
