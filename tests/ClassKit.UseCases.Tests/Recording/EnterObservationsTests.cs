using ClassKit.Lessons.Measured;
using ClassKit.Records.Classes;
using ClassKit.Records.Observations;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>What teams measured goes on record as it was typed, under the day of the lesson; what changed stands in the log.</summary>
public sealed class EnterObservationsTests
{
    private static readonly Author Kim = new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", "");

    private static readonly PackRequest Pack = new(SmallClass.Lesson, UsualClass.Profile, "class.md");

    [Fact]
    public void Values_stand_under_the_day_on_which_the_lesson_was_given_and_a_second_time_takes_their_place()
    {
        using var record = TeachingRecord.InMemory();
        var pack = BuildPack.Run(Pack, Run.Unwatched).Model!;
        var form = new ObservationForm(pack);
        var bread = form.Breads[0];
        var measure = bread.Observations[0].Measure;
        ObservedMade Measured(string value) =>
            new(
                pack,
                MeasuredClass.Of(
                    pack,
                    [
                        TeamMeasurements.Of(
                            form,
                            new Dictionary<string, string>
                            {
                                [ObservationForm.Team] = "Team 1",
                                [ObservationForm.Field(bread, measure, 2)] = value,
                            },
                            ""
                        ),
                    ]
                ),
                []
            );
        record.Write(new(Kim.Now, "Kim", "test", "", ""), session =>
            LessonRegister.Put(session, ClassRegister.Put(session, form.Cohort), pack.Lesson.Id, pack.Lesson.Title, new(2026, 11, 20))
        );

        var entered = EnterObservations.Run(new(record, Kim, Measured("62,5"), null), Run.Unwatched).Model!;
        EnterObservations.Run(new(record, Kim, Measured("63.5"), null), Run.Unwatched);

        // A year on the class of the same name is given the lesson once more, and nobody has said when.
        var nextYear = EnterObservations
            .Run(new(record, Kim with { Now = Kim.Now.AddYears(1) }, Measured("70"), null), Run.Unwatched)
            .Model!;
        Assert.Equal(new DateOnly(2027, 11, 29), nextYear.Given.Day);
        Assert.Equal((new DateOnly(2026, 11, 20), 1), (entered.Given.Day, entered.Values));
        var kept = Assert.Single(record.Read(session => LessonRegister.Observations(session, entered.Given)));
        Assert.Equal(
            ("Team 1", bread.Formula.Id, $"{ObservationForm.NameOf(measure)}.2", 63.5m),
            (kept.Team, kept.Bread, kept.Measured, kept.Value)
        );
        Assert.Equal(
            1,
            record.Read(session =>
                session.Number("SELECT count(*) FROM changed_row WHERE of_table = 'observation' AND before LIKE '%62.5%'")
            )
        );
    }
}
