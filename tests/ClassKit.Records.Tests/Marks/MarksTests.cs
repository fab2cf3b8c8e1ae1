using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Marks;
using ClassKit.Records.Observations;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Records.Tests.Samples;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Records.Tests.Marks;

/// <summary>Marks and measurements come out of the record as they went in, and what was there before is in the log.</summary>
public sealed class MarksTests : IDisposable
{
    private static readonly BenchScale Scale = new([("Shaping", 2), ("Baking", 1.5m)], [0, 1.25m, 4], ["not yet", "nearly", "fully"]);

    private readonly TeachingRecord _record = TeachingRecord.InMemory();
    private readonly RecordedClass _class;

    public MarksTests() => _class = Sample.Enrol(_record, "Bakers 1", Sample.Ada, Sample.Ben);

    public void Dispose() => _record.Dispose();

    [Fact]
    public void Every_state_of_a_typed_mark_comes_back()
    {
        var work = Work(WorkKind.TypedMarks);
        Mark[] marks =
        [
            Mark.Absent,
            Mark.Excused,
            Mark.NotDue,
            Mark.Of(0, 12),
            Mark.Of(7.1m, 12) with
            {
                Lateness = Lateness.Late,
            },
            Mark.Of(12, 12) with
            {
                Lateness = Lateness.LateAndSettled,
            },
            Mark.Of(0.1234567890123456789012345678m, 12),
        ];
        Attempt[] attempts = [.. marks.Select((mark, at) => new Attempt(Sample.Ada.Id, "Loaf", at + 1, mark))];

        _record.Write(Sample.Change(), session =>
        {
            foreach (var attempt in attempts)
                TypedMarks.Put(session, work, attempt);
            return true;
        });

        var found = _record.Read(session => TypedMarks.Of(session, work));
        Assert.Equal(attempts.Select(Fields), found.Select(Fields));
    }

    [Fact]
    public void A_changed_mark_is_logged_with_what_it_was_and_an_unchanged_one_is_not()
    {
        var work = Work(WorkKind.TypedMarks);
        void Type(decimal points, string why) => _record.Write(Sample.Change() with { Why = why }, session =>
            {
                TypedMarks.Put(session, work, new(Sample.Ada.Id, "Loaf", 1, Mark.Of(points, 12)));
                return true;
            });
        Type(7.5m, "");
        Type(7.50m, "typed again");
        Type(8, "added up wrongly");

        var log = _record.Read(session => ChangeLog.OfStudent(session, Sample.Ada.Id));

        var logged = Assert.Single(log);
        Assert.Equal("added up wrongly", logged.Change.Why);
        Assert.Equal(
            [new ChangedRow("typed_mark", Sample.Ada.Id, "Loaf 1 Marked 7.5 12 InTime", "Loaf 1 Marked 8 12 InTime")],
            logged.Rows
        );
    }

    /// <summary>
    /// Whatever decides a grade and can be changed says what it was. Other tables only grow, or lose nothing but what is an
    /// erased student's.
    /// </summary>
    [Fact]
    public void Every_table_that_can_change_is_logged()
    {
        string[] onlyGrow =
        [
            "change",
            "changed_row",
            "former_name",
            "deal",
            "deal_part",
            "deal_seat",
            "grading",
            "graded",
            "answer",
            "correction",
            "returned_file",
            "gradebook_point",
            "class_page",
            "frozen_grade",
            "frozen_work",
        ];
        List<string> Ask(string sql) => _record.Write(Sample.Change(), session => session.Query(sql, row => row.Text(0)));

        var logged = Ask("SELECT DISTINCT tbl_name FROM temp.sqlite_schema WHERE type = 'trigger'");

        Assert.Equal(Ask("SELECT name FROM sqlite_schema WHERE type = 'table'").Except(onlyGrow).Order(), logged.Order());
    }

    [Fact]
    public void A_changed_work_is_logged_with_what_it_was_worth_and_one_that_stays_is_not()
    {
        var work = Work(WorkKind.TypedMarks);
        Work(WorkKind.TypedMarks);
        _record.Write(Sample.Change() with { Why = "two questions were unfair" }, session =>
            TermRegister.PutWork(session, TermRegister.Put(session, _class, "Autumn"), 0, work.Assignment with { OutOf = 10 })
        );

        var logged = Assert.Single(_record.Read(ChangeLog.Read), change => change.Rows.Count > 0);

        Assert.Equal("two questions were unfair", logged.Change.Why);
        Assert.Equal([new ChangedRow("work", null, "Loaf TypedMarks Bench 12", "Loaf TypedMarks Bench 10")], logged.Rows);
    }

    [Fact]
    public void What_two_markers_saw_comes_back_with_its_rubric_and_comments()
    {
        var work = Work(WorkKind.BenchWork);
        BenchSheet first =
                new(
                    "Kim",
                    new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = [2, 1], [Sample.Ben.Id] = [0, BenchScale.NotAsked] }
                )
                {
                    Comments = new Dictionary<string, string> { [Sample.Ben.Id] = "apron" },
                },
            second = new("Lou", new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = [1, 1] });
        _record.Write(Sample.Change(), session =>
        {
            Assert.True(BenchRegister.Measure(session, work, Scale));
            BenchRegister.Put(session, work, 1, 1, first);
            BenchRegister.Put(session, work, 1, 2, second);
            return true;
        });

        var bench = Assert.Single(_record.Read(session => BenchRegister.Of(session, work)));

        Assert.Equal(
            new BenchMarking(Scale, first, second).Marks(MarkerRule.Mean).Select(mark => (mark.Student, mark.Mark.Points, mark.Mark.OutOf)),
            bench.Marking.Marks(MarkerRule.Mean).Select(mark => (mark.Student, mark.Mark.Points, mark.Mark.OutOf))
        );
        Assert.Equal(["Kim", "Lou"], new[] { bench.Marking.First.Marker, bench.Marking.Second!.Marker });
        Assert.Equal([KeyValuePair.Create(Sample.Ben.Id, "apron")], bench.Marking.First.Comments);
        Assert.Empty(bench.Marking.Second.Comments);
    }

    /// <summary>The record follows the files: what was said of somebody and taken back stands in the log alone.</summary>
    [Fact]
    public void A_comment_that_is_taken_out_is_gone_and_words_without_levels_are_kept()
    {
        var work = Work(WorkKind.BenchWork);
        void Mark(int[]? levels, string? comment) => _record.Write(Sample.Change(), session =>
            {
                BenchRegister.Measure(session, work, Scale);
                BenchRegister.Put(
                    session,
                    work,
                    1,
                    1,
                    new("Kim", levels is null ? [] : new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = levels })
                    {
                        Comments = comment is null ? [] : new Dictionary<string, string> { [Sample.Ada.Id] = comment },
                    }
                );
                return true;
            });
        (int Levels, string? Comment) Seen()
        {
            var sheet = Assert.Single(_record.Read(session => BenchRegister.Of(session, work))).Marking.First;
            return (sheet.Places.GetValueOrDefault(Sample.Ada.Id)?.Count ?? 0, sheet.Comments.GetValueOrDefault(Sample.Ada.Id));
        }

        Mark([2, 1], "never listens");
        Assert.Equal((2, "never listens"), Seen());
        Mark([2, 1], null);
        Assert.Equal((2, null), Seen());
        Mark(null, "burnt hand, sent to first aid");
        Assert.Equal((0, "burnt hand, sent to first aid"), Seen());
        Assert.Empty(Assert.Single(_record.Read(session => BenchRegister.OfStudent(session, Sample.Ada.Id))).Levels);
        Mark([1, 1], "burnt hand, sent to first aid");
        Assert.Equal((2, "burnt hand, sent to first aid"), Seen());

        var log = string.Join('\n', _record.Read(session => ChangeLog.OfStudent(session, Sample.Ada.Id)).SelectMany(change => change.Rows));
        Assert.Contains("never listens", log, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_level_is_logged_by_its_criterion_and_a_mark_that_is_taken_away_with_all_of_it()
    {
        var work = Work(WorkKind.BenchWork);
        void Mark(string why, string? comment, params int[] levels) => _record.Write(Sample.Change() with { Why = why }, session =>
            {
                BenchRegister.Measure(session, work, Scale);
                BenchRegister.Put(
                    session,
                    work,
                    1,
                    1,
                    new("Kim", new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = levels })
                    {
                        Comments = comment is null ? [] : new Dictionary<string, string> { [Sample.Ada.Id] = comment },
                    }
                );
                return true;
            });
        Mark("", "apron", 2, BenchScale.NotAsked);
        Mark("typed again", "apron", 2, BenchScale.NotAsked);
        Mark("baked after all", "apron", 2, 1);
        Mark("", "apron, knife", 2, 1);
        _record.Write(Sample.Change() with { Why = "was not there" }, session =>
            BenchRegister.TakeAway(session, work, 1, 1, Sample.Ada.Id)
        );

        var log = _record.Read(session => ChangeLog.OfStudent(session, Sample.Ada.Id));

        Assert.Equal(["baked after all", "", "was not there"], log.Select(change => change.Change.Why));
        Assert.Equal(
            [
                new ChangedRow("bench_mark_level", Sample.Ada.Id, "Loaf 1 Kim Baking: -", "Loaf 1 Kim Baking: nearly"),
                new ChangedRow(
                    "bench_mark",
                    Sample.Ada.Id,
                    "Loaf 1 Kim Shaping: fully, Baking: nearly apron",
                    "Loaf 1 Kim Shaping: fully, Baking: nearly apron, knife"
                ),
                new ChangedRow("bench_mark", Sample.Ada.Id, "Loaf 1 Kim Shaping: fully, Baking: nearly apron, knife", null),
            ],
            log.SelectMany(change => change.Rows)
        );
        Assert.Empty(_record.Read(session => BenchRegister.OfStudent(session, Sample.Ada.Id)));
    }

    /// <summary>A rule that counts the first marker's levels counts the second's only of whom the first did not mark.</summary>
    [Fact]
    public void The_second_marker_stays_the_second_where_nothing_of_the_first_is_left()
    {
        var work = Work(WorkKind.BenchWork);
        _record.Write(Sample.Change(), session =>
        {
            Assert.True(BenchRegister.Measure(session, work, Scale));
            foreach (var (marker, name) in new[] { (1, "Kim"), (2, "Lou") })
                BenchRegister.Put(
                    session,
                    work,
                    1,
                    marker,
                    new(name, new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = [marker, 1] })
                );
            return BenchRegister.TakeAway(session, work, 1, 1, Sample.Ada.Id);
        });

        var marking = Assert.Single(_record.Read(session => BenchRegister.Of(session, work))).Marking;

        Assert.Equal("Lou", marking.Second?.Marker);
        Assert.Empty(marking.First.Places);
        foreach (var rule in Enum.GetValues<MarkerRule>())
            Assert.Equal([(Sample.Ada.Id, Scale.Points([2, 1]))], marking.Marks(rule).Select(mark => (mark.Student, mark.Mark.Points)));
    }

    [Fact]
    public void A_rubric_stays_once_somebody_has_marked_with_it()
    {
        var work = Work(WorkKind.BenchWork);
        var other = Scale with { Levels = [0, 2, 4] };
        bool Measure(BenchScale scale) => _record.Write(Sample.Change(), session => BenchRegister.Measure(session, work, scale));

        Assert.True(Measure(Scale));
        Assert.True(Measure(other));
        _record.Write(Sample.Change(), session =>
        {
            BenchRegister.Put(session, work, 1, 1, new("Kim", new Dictionary<string, IReadOnlyList<int>> { [Sample.Ada.Id] = [2, 1] }));
            return true;
        });
        Assert.False(Measure(Scale));
        Assert.Equal(other.Levels, _record.Read(session => BenchRegister.Scale(session, work))!.Levels);
    }

    [Fact]
    public void A_measurement_takes_the_place_of_the_one_before()
    {
        var given = _record.Write(Sample.Change(), session =>
            LessonRegister.Put(session, _class, "one-tin-three-lifts", "One tin, three lifts", Sample.Day)
        );
        void Measure(decimal height) => _record.Write(Sample.Change(), session =>
            {
                LessonRegister.Put(session, given, new("Team 1", "Popovers", "height", height, "cm", null));
                return true;
            });
        Measure(7.5m);
        Measure(8.25m);

        Assert.Equal(
            [new Observation("Team 1", "Popovers", "height", 8.25m, "cm", null)],
            _record.Read(session => LessonRegister.Observations(session, given))
        );
        Assert.Contains(_record.Read(ChangeLog.Read), change =>
            change.Rows is [{ Before: "Team 1 Popovers height 7.5 cm", After: "Team 1 Popovers height 8.25 cm" }]
        );
    }

    private RecordedWork Work(WorkKind kind) =>
        _record.Write(Sample.Change(), session =>
            TermRegister.PutWork(session, TermRegister.Put(session, _class, "Autumn"), 0, new("Loaf", "Loaf", kind, "Bench", 12))
        );

    private static (string, int, MarkState, decimal, decimal, Lateness) Fields(Attempt attempt) =>
        (attempt.Student, attempt.Sitting, attempt.Mark.State, attempt.Mark.Points, attempt.Mark.OutOf, attempt.Mark.Lateness);
}
