using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Measured;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Observations;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Puts on record what the teams of a class measured, under the lesson that they were given. What was typed goes there; what is worked out
/// of it is worked out again.
/// </summary>
public static class EnterObservations
{
    /// <summary>What is brought back comes within so many days of its lesson, a term at most.</summary>
    private const int Recent = 120;

    /// <summary>Puts it on record.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<EnteredObservations> Run(EnterObservationsRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var (pack, measured) = (request.Observed.Pack, request.Observed.Measured);
        if (pack.Class.Name.Length == 0)
            return new(
                null,
                [
                    new(
                        pack.Lesson.Title,
                        null,
                        "Nobody has said what the class is called",
                        "Name the class profile, so that the measurements go on record under the class."
                    ),
                ]
            );
        List<Records.Observations.Observation> typed =
        [
            .. measured.Breads.SelectMany(bread =>
                bread
                    .Quantities.Where(quantity => quantity.Asked.Measure != Measure.BakeLoss)
                    .SelectMany(quantity => quantity.Points.Select(point => Of(bread, quantity, point)))
            ),
        ];
        return RecordTroubles.Told(() =>
            request.Record.Write(request.Author.Of(DrawObservations.Kind, $"{pack.Class.Name}: {pack.Lesson.Title}"), session =>
            {
                var named = ClassRegister.Put(session, pack.Class.Name);
                var today = request.Author.Today;
                // A class keeps its name for years: what it was given last year keeps its own measurements.
                var day = request.Day
                    ?? LessonRegister
                        .Of(session, named)
                        .LastOrDefault(given => given.Lesson == pack.Lesson.Id && given.Day <= today && given.Day.AddDays(Recent) >= today)
                        ?.Day
                    ?? today;
                var given = LessonRegister.Put(session, named, pack.Lesson.Id, pack.Lesson.Title, day);
                foreach (var one in run.Each(RunStep.Recording, typed))
                    LessonRegister.Put(session, given, one);
                return new Reading<EnteredObservations>(new(given, typed.Count), []);
            })
        );
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(EnteredObservations entered)
    {
        ArgumentNullException.ThrowIfNull(entered);
        return new(
            [],
            [new Note.MeasurementsEntered(entered.Given.Class.Name, entered.Given.Title, entered.Given.Day, entered.Values)],
            []
        );
    }

    private static Records.Observations.Observation Of(MeasuredBread bread, MeasuredQuantity quantity, MeasuredPoint point) =>
        new(
            point.Team,
            bread.Compared.Bread.Formula.Id,
            FormattableString.Invariant($"{ObservationForm.NameOf(quantity.Asked.Measure)}.{point.Piece}"),
            (decimal)point.Value,
            quantity.Unit.Symbol,
            null
        );
}
