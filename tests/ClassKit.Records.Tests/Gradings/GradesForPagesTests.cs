using ClassKit.Records.Deals;
using ClassKit.Records.Erasing;
using ClassKit.Records.Gradings;
using ClassKit.Records.Storage;
using ClassKit.Records.Tests.Samples;

namespace ClassKit.Records.Tests.Gradings;

/// <summary>A page of a class and one of a student tell the same of the gradings that stand.</summary>
public sealed class GradesForPagesTests
{
    [Fact]
    public void A_class_sees_the_latest_grading_of_each_deal_in_its_order_and_a_student_their_own()
    {
        using var record = TeachingRecord.InMemory();
        var named = Sample.Enrol(record, "Bakers 1", Sample.Ada, Sample.Ben);
        record.Write(Sample.Change(), session =>
        {
            foreach (var deal in new[] { 'a', 'b' })
                DealRegister.Put(
                    session,
                    named,
                    new(new(deal, 64), $"{deal}", "lesson", $"Set {deal}", "{}", [], []) { Replaces = deal == 'b' ? new('a', 64) : null }
                );
            GradingRegister.Put(session, Grading('a', (Sample.Ada.Id, 1m), (Sample.Ben.Id, 2m)));
            GradingRegister.Put(session, Grading('b', (Sample.Ben.Id, 7.5m), (Sample.Ada.Id, null)));
            return GradingRegister.Put(session, Grading('a', (Sample.Ada.Id, 3m), (Sample.Ben.Id, 2m)));
        });

        StandingGrade[] all =
        [
            Of('a', Sample.Ada.Id, 3m),
            Of('a', Sample.Ben.Id, 2m),
            Of('b', Sample.Ben.Id, 7.5m),
            Of('b', Sample.Ada.Id, null),
        ];
        Assert.Equal(all, record.Read(session => GradesForPages.OfClass(session, named)));
        Assert.Equal(
            all.Where(one => one.Student == Sample.Ada.Id),
            record
                .Read(session => GradesForPages.OfStudent(session, Sample.Ada.Id))
                .GroupBy(one => one.Grade.Deal)
                .Select(gradings => gradings.Last().Grade)
        );
        Assert.Equal(
            [1m, 3m, null],
            record.Read(session => GradesForPages.OfStudent(session, Sample.Ada.Id)).Select(one => one.Grade.Points)
        );
        Assert.Equal(new string('a', 64), record.Read(session => DealRegister.Read(session, new('b', 64)))!.Replaces);

        record.Write(Sample.Change(), session => Erasure.Erase(session, Sample.Ada.Id, (entry, _) => entry));
        Assert.Equal(
            all.Select(one => one.Student == Sample.Ada.Id ? one with { Student = null } : one),
            record.Read(session => GradesForPages.OfClass(session, named))
        );

        // Graded again from files that know nothing of her, the class's statistics keep what nobody's is.
        record.Write(Sample.Change(), session => GradingRegister.Put(session, Grading('a', (Sample.Ben.Id, 4m))));
        Assert.Equal(
            [Of('a', Sample.Ben.Id, 4m), Of('a', "", 3m) with { Student = null }],
            record.Read(session => GradesForPages.OfClass(session, named)).Take(2)
        );
    }

    private static StandingGrade Of(char deal, string student, decimal? points) =>
        new($"{deal}", $"Set {deal}", student, points is null ? "missing" : "graded", points, points is null ? null : 40);

    private static RecordedGrading Grading(char deal, params (string Student, decimal? Points)[] students) =>
        new(
            new(deal, 64),
            $"{deal}{students[0].Points}",
            3,
            "1.0.0",
            "{}",
            [
                .. students.Select(one => new GradedStudent(
                    one.Student,
                    one.Points is null ? "missing" : "graded",
                    one.Points,
                    one.Points is null ? null : 40,
                    null,
                    null,
                    [],
                    "{}"
                )),
            ],
            [],
            []
        );
}
