using ClassKit.Grading;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.UseCases.Tests.Intake;

/// <summary>Whatever goes wrong with one returned item is what becomes of it, and of nothing else.</summary>
public sealed class BoundaryTests : IDisposable
{
    private static readonly byte[] AdasWork = SmallClass.Filled(SmallClass.Ada);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>What the system refuses, what libraries throw over broken files, and what mistakes of our own look like.</summary>
    public static TheoryData<string> Failures =>
        [
            .. new[]
            {
                typeof(IOException),
                typeof(UnauthorizedAccessException),
                typeof(FileNotFoundException),
                typeof(DirectoryNotFoundException),
                typeof(PathTooLongException),
                typeof(EndOfStreamException),
                typeof(InvalidDataException),
                typeof(NotSupportedException),
                typeof(OverflowException),
                typeof(ArgumentException),
                typeof(InvalidOperationException),
                typeof(NullReferenceException),
                typeof(IndexOutOfRangeException),
                typeof(KeyNotFoundException),
                typeof(FormatException),
                typeof(System.Xml.XmlException),
                typeof(InsufficientExecutionStackException),
                typeof(Unheard),
            }.Select(type => type.AssemblyQualifiedName!),
        ];

    [Theory]
    [MemberData(nameof(Failures))]
    public void A_failure_of_any_kind_is_an_outcome_with_words_for_the_student_and_names_no_place_of_the_instructors(string type)
    {
        var failure = (Exception)Activator.CreateInstance(Type.GetType(type, throwOnError: true)!, "/home/instructor/x")!;
        var grader = new ClassGrader(SmallClass.Dealt);
        var items = Guarded.Each(Broken, thrown => ReturnedItem.Failed("ada-berg.zip", thrown)).Append(new("ada.xlsx", AdasWork, null));
        var grades = grader.Settle(ParallelJudging.Judge(grader, items, Run.Unwatched));

        var file = grades.Files.Single(file => file.File == "ada-berg.zip");
        Assert.Equal(failure is IOException or UnauthorizedAccessException ? FileFate.Refused : FileFate.OurError, file.Fate);
        Assert.Equal(SmallClass.Ada.Who, file.Student);
        Assert.Contains("nothing that the student did", UncountedWords.Of(file), StringComparison.Ordinal);
        Assert.DoesNotContain("/home", UncountedWords.Of(file) + file.Fault, StringComparison.Ordinal);
        Assert.Equal(
            ["ada.xlsx", "before.xlsx"],
            grades.Files.Where(file => file.Fate is FileFate.Graded or FileFate.OtherVersion).Select(file => file.File)
        );
        var notes = GradeNotes.Of(GradeCommands.ResultOf(grades));
        Assert.Equal(file.Fault is not null, notes.Any(note => note is Note.NotJudged { File.Path: "ada-berg.zip" }));

        IEnumerable<ReturnedItem> Broken()
        {
            yield return new("before.xlsx", AdasWork, null);
            throw failure;
        }
    }

    [Fact]
    public void What_is_open_is_closed_where_the_run_stops_on_the_way()
    {
        var isOpen = false;

        var first = Guarded.Each(Opened, failure => ReturnedItem.Failed("x", failure)).First();

        Assert.Equal("ada.xlsx", first.Path);
        Assert.False(isOpen);

        IEnumerable<ReturnedItem> Opened()
        {
            isOpen = true;
            try
            {
                yield return new("ada.xlsx", AdasWork, null);
                yield return new("bo.xlsx", AdasWork, null);
            }
            finally
            {
                isOpen = false;
            }
        }
    }

    [Fact]
    public void A_cancelled_run_is_cancelled()
    {
        Assert.Throws<OperationCanceledException>(() =>
            Guarded.Each(() => throw new OperationCanceledException(), failure => ReturnedItem.Failed("x", failure)).ToList()
        );
    }

    [Fact]
    public void A_file_that_vanishes_while_others_are_read_is_named()
    {
        _folder.Write("a/ada.xlsx", AdasWork);
        _folder.Write("b/ben.xlsx", [1]);
        _folder.Write("c/cleo.xlsx", [1]);
        using var items = ReturnedFiles.At(_folder.Path).Model!.Read().GetEnumerator();

        Assert.True(items.MoveNext());
        File.Delete(_folder.Of("b", "ben.xlsx"));
        Directory.Delete(_folder.Of("c"), recursive: true);
        var rest = new List<ReturnedItem>();
        while (items.MoveNext())
            rest.Add(items.Current);

        Assert.Equal(["b/ben.xlsx", "c/cleo.xlsx"], rest.Select(item => item.Path));
        Assert.All(rest, item => Assert.Equal(new Refusal.Unopened(OpeningFault.Gone), item.Refusal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_whole_class_that_vanishes_is_one_refused_item(bool isZip)
    {
        var path = isZip
            ? _folder.Write("class.zip", Zip.Of(("ada.xlsx", AdasWork)))
            : Directory.CreateDirectory(_folder.Of("class")).FullName;
        var files = ReturnedFiles.At(path).Model!;
        if (isZip)
            File.Delete(path);
        else
            Directory.Delete(path);

        Assert.NotNull(Assert.Single(files.Read()).Refusal);
    }

    [Fact]
    public void Links_in_circles_sockets_and_names_of_all_lengths_hold_nothing_up()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("Sockets and links in folders; looked for Linux.");
        _folder.Write("ada.xlsx", AdasWork);
        Directory.CreateSymbolicLink(_folder.Of("round"), _folder.Path);
        File.CreateSymbolicLink(_folder.Of("one"), _folder.Of("other"));
        File.CreateSymbolicLink(_folder.Of("other"), _folder.Of("one"));
        File.CreateSymbolicLink(_folder.Of("self"), _folder.Of("self"));
        File.CreateSymbolicLink(_folder.Of("nowhere"), _folder.Of("not there"));
        File.CreateSymbolicLink(_folder.Of("device"), "/dev/zero");
        _folder.Write(new string('n', 255), [1]);
        using var socket = new System.Net.Sockets.Socket(System.Net.Sockets.AddressFamily.Unix, System.Net.Sockets.SocketType.Stream, 0);
        socket.Bind(new System.Net.Sockets.UnixDomainSocketEndPoint(_folder.Of("socket.xlsx")));

        var grades = Graded.Of(_folder.Path);

        Assert.Equal(9, grades.Files.Count);
        Assert.Equal("ada.xlsx", Assert.Single(grades.Files, file => file.Fate == FileFate.Graded).File);
        Assert.All(grades.Files.Where(file => file.Fate != FileFate.Graded), file => Assert.Equal(FileFate.Refused, file.Fate));
    }

    /// <summary>Files of the system whose lengths are wrong, that cannot be read, or that are other each time.</summary>
    [Theory]
    [InlineData("/proc/self/attr")]
    [InlineData("/proc/self/fdinfo")]
    [InlineData("/sys/kernel/mm")]
    public void Folders_of_the_system_come_to_an_end(string folder)
    {
        if (!Directory.Exists(folder))
            Assert.Skip($"There is no {folder} here.");

        Assert.All(Graded.Of(folder).Files, file => Assert.True(file.Fault is null && UncountedWords.Of(file).Length > 0, file.ToString()));
    }

    [Fact]
    public void The_same_bytes_are_read_once_under_any_number_of_names()
    {
        var grader = new ClassGrader(SmallClass.Dealt);
        var reads = 0;
        foreach (var path in new[] { "a.xlsx", "b.xlsx", "Ada Berg.xlsx", "Ben Okoye.xlsx", "c.zip/d.xlsx" })
        {
            var judged = grader.JudgeOnce(
                "same",
                () =>
                {
                    reads++;
                    return FileReading.Read(new("first.xlsx", AdasWork, null));
                },
                path,
                null
            );
            Assert.Equal(path, judged.Path);
        }

        Assert.Equal(1, reads);
    }

    [Fact]
    public void Copies_of_a_file_are_graded_as_if_each_were_alone()
    {
        foreach (var name in new[] { "1/work.xlsx", "2/Ben Okoye.xlsx", "3/Ada Berg.xlsx" })
            _folder.Write(name, AdasWork);

        var grades = Graded.Of(_folder.Path);

        Assert.Equal(3, grades.Files.Count(file => file.Student == SmallClass.Ada.Who));
        Assert.Single(grades.Files, file => file.Fate == FileFate.Graded);
        Assert.All(grades.Files.Where(file => file.Fate == FileFate.OtherVersion), file => Assert.IsType<Uncounted.Copy>(file.Why));
    }

    [Fact]
    public void A_workbook_without_a_name_inside_is_each_students_whose_name_it_bears()
    {
        var anonymous = Zip.Of(
            Hostile
                .Parts.Of(AdasWork)
                .Names.Select(part => (part, System.Text.Encoding.UTF8.GetBytes(Hostile.Parts.Of(AdasWork).Text(part))))
        );
        _folder.Write("Ada Berg.pdf", [1]);
        _folder.Write("Ben Okoye.pdf", [1]);
        _folder.Write("copy.xlsx", anonymous);

        var grades = Graded.Of(_folder.Path);

        Assert.Equal([GradeStatus.Graded, GradeStatus.Unreadable, GradeStatus.Missing], grades.Students.Select(student => student.Status));
    }

    private sealed class Unheard(string message) : Exception(message);
}
