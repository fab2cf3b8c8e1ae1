using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.Records.Tests.Samples;

namespace ClassKit.Records.Tests.Classes;

public sealed class ClassRegisterTests : IDisposable
{
    private readonly TeachingRecord _record = TeachingRecord.InMemory();

    public void Dispose() => _record.Dispose();

    [Fact]
    public void Who_leaves_and_comes_back_has_two_enrolments()
    {
        var named = Sample.Enrol(_record, "Bakers 1", Sample.Ada);
        Assert.True(_record.Write(Sample.Change(), session => ClassRegister.Leave(session, named, Sample.Ada.Id, new(2026, 10, 1))));
        _record.Write(Sample.Change(), session => ClassRegister.Enrol(session, named, [Sample.Ada], new(2027, 1, 10)));

        var found = _record.Read(session => ClassRegister.OfStudent(session, Sample.Ada.Id));

        Assert.Equal([(Sample.Day, new DateOnly(2026, 10, 1)), (new(2027, 1, 10), null)], found.Select(one => (one.Since, one.Until)));
        Assert.All(found, one => Assert.Equal(Sample.Ada, one.Student));
    }

    [Fact]
    public void A_name_may_change_within_a_class_and_the_log_says_from_what()
    {
        var named = Sample.Enrol(_record, "Bakers 1", Sample.Ada, Sample.Ben);
        _record.Write(Sample.Change() with { Why = "married" }, session =>
            ClassRegister.Enrol(session, named, [Sample.Ada with { Name = "Ada Lind" }], Sample.Day)
        );

        Assert.Equal("Ada Lind", _record.Read(session => ClassRegister.FindStudent(session, Sample.Ada.Id))!.Name);
        var logged = _record.Read(ChangeLog.Read)[^1];
        Assert.Equal(("Kim", "married", Sample.Noon), (logged.Change.Who, logged.Change.Why, logged.Change.At));
        Assert.Equal([new ChangedRow("student", Sample.Ada.Id, "Ada Berg ada@example.org", "Ada Lind ada@example.org")], logged.Rows);
    }

    [Fact]
    public void An_id_of_another_class_is_the_same_person_only_under_the_same_name()
    {
        Sample.Enrol(_record, "Bakers 1", Sample.Ada);
        Sample.Enrol(_record, "Cooks 2", Sample.Ada);

        var others = _record.Write(Sample.Change(), session =>
            ClassRegister.Enrol(session, ClassRegister.Put(session, "Cooks 3"), [Sample.Ada with { Name = "Ada Bergman" }], Sample.Day)
        );

        Assert.Equal("Ada Berg", Assert.Single(others).OnRecord.Name);
        Assert.Equal(2, _record.Read(session => ClassRegister.OfStudent(session, Sample.Ada.Id)).Count);
    }

    [Fact]
    public void A_class_that_is_renamed_is_found_by_every_name_it_had()
    {
        var named = Sample.Enrol(_record, "Bakers 1", Sample.Ada);
        var other = Sample.Enrol(_record, "Cooks 2", Sample.Ben);

        Assert.Equal("Bakers 2", _record.Write(Sample.Change(), session => ClassRegister.Rename(session, named, "Bakers 2"))!.Name);
        Assert.Equal(
            "Bakers 3",
            _record.Write(Sample.Change(), session => ClassRegister.Rename(session, named with { Name = "Bakers 2" }, "Bakers 3"))!.Name
        );
        foreach (var name in new[] { "Bakers 1", "Bakers 2", "Bakers 3" })
            Assert.Equal(named with { Name = "Bakers 3" }, _record.Write(Sample.Change(), session => ClassRegister.Put(session, name)));
        Assert.Equal(["Bakers 3", "Cooks 2"], _record.Read(ClassRegister.All).Select(one => one.Name));
        Assert.Equal("Bakers 3", Assert.Single(_record.Read(session => ClassRegister.OfStudent(session, Sample.Ada.Id))).Class.Name);

        // Neither the name of another class nor one that another class had can be taken, and one of its own can be taken up again.
        Assert.Null(_record.Write(Sample.Change(), session => ClassRegister.Rename(session, other, "Bakers 3")));
        Assert.Null(_record.Write(Sample.Change(), session => ClassRegister.Rename(session, other, "Bakers 1")));
        _record.Write(Sample.Change(), session => ClassRegister.Rename(session, named with { Name = "Bakers 3" }, "Bakers 1"));
        Assert.Equal(named, _record.Read(session => ClassRegister.Find(session, "Bakers 3")));
        Assert.Equal(other, _record.Read(session => ClassRegister.Find(session, "Cooks 2")));
    }

    [Fact]
    public void What_is_abandoned_leaves_no_change_behind()
    {
        _record.Write(Sample.Change(), session =>
        {
            session.Abandon();
            return ClassRegister.Put(session, "Bakers 1");
        });

        Assert.Empty(_record.Read(ClassRegister.All));
        Assert.Empty(_record.Read(ChangeLog.Read));
    }
}
