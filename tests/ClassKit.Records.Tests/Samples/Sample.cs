using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Tests.Samples;

/// <summary>What tests write of: an invented class.</summary>
internal static class Sample
{
    public static readonly DateTimeOffset Noon = new(2026, 11, 29, 12, 0, 0, TimeSpan.FromHours(1));

    public static readonly DateOnly Day = new(2026, 9, 1);

    public static readonly Student Ada = new("ada-berg", "Ada Berg", "ada@example.org");

    public static readonly Student Ben = new("ben-okoye", "Ben Okoye");

    public static Change Change(string about = "Bakers 1") => new(Noon, "Kim", "test", about, "");

    /// <summary>Enrols a class.</summary>
    public static RecordedClass Enrol(TeachingRecord record, string name, params IReadOnlyList<Student> students) =>
        record.Write(Change(name), session =>
        {
            var named = ClassRegister.Put(session, name);
            Assert.Empty(ClassRegister.Enrol(session, named, students, Day));
            return named;
        });
}
