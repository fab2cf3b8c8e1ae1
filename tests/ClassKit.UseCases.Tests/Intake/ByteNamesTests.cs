using System.Diagnostics;
using ClassKit.Grading;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Intake;

/// <summary>
/// Files whose names are bytes and no UTF-8, as old archives and old systems leave them on Linux, are graded like all others.
/// </summary>
public sealed class ByteNamesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose()
    {
        // .NET cannot delete what it cannot name.
        if (OperatingSystem.IsLinux())
            Shell("rm -rf ./*");
        _folder.Dispose();
    }

    [Fact]
    public void Names_that_are_not_UTF_8_are_graded_in_folders_of_such_names_too()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux has names that are not Unicode.");
        _folder.Write("returned/a.xlsx", SmallClass.Filled(SmallClass.Ada));
        _folder.Write("returned/b.xlsx", SmallClass.Filled(SmallClass.Ben));
        _folder.Write("returned/c.zip", Zip.Of(("cleo.xlsx", SmallClass.Filled(SmallClass.Cleo))));
        // \351 is é in ISO 8859-1 and Windows-1252; \357\277\275 is U+FFFD itself, a name that is text.
        Shell(
            """
            mkdir "$(printf 'classe \351t\351')" && mv a.xlsx "$(printf 'ad\351.xlsx')" && mv b.xlsx "$(printf 'classe \351t\351/b\351n.xlsx')" && mv c.zip "$(printf 'cl\351o.zip')"
            touch "$(printf 'adé.xlsx')" "$(printf 'a\357\277\275.xlsx')" && ln -s /etc/passwd "$(printf 'li\351n.xlsx')" && mkfifo "$(printf 'p\351pe.xlsx')"
            """
        );

        var grader = new ClassGrader(SmallClass.Dealt);
        var grades = grader.Settle(ParallelJudging.Judge(grader, ReturnedFiles.At(_folder.Of("returned")).Model!, Run.Unwatched));

        Assert.Equal(["adé (2).xlsx", "classe été/bén.xlsx", "cléo.zip/cleo.xlsx"], grades.Students.Select(student => student.File));
        Assert.All(grades.Students.SelectMany(student => student.Answers), answer => Assert.Equal(Outcome.Sound, answer.Outcome));
        Assert.Equal(
            ["adé (2).xlsx", "adé.xlsx", "a\uFFFD.xlsx", "classe été/bén.xlsx", "cléo.zip/cleo.xlsx", "lién.xlsx", "pépe.xlsx"],
            grades.Files.Select(file => file.File).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void One_that_cannot_be_read_is_its_own_outcome()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux has names that are not Unicode.");
        _folder.Write("returned/b.xlsx", SmallClass.Filled(SmallClass.Ben));
        Shell("""mkdir "$(printf 'not a file \351.xlsx')" && touch "$(printf 'gon\351.xlsx')" """);
        var files = ReturnedFiles.At(_folder.Of("returned")).Model!.List();
        Shell("""rm "$(printf 'gon\351.xlsx')" """);

        var items = files.Items.ToList();

        Assert.Equal(["b.xlsx", "goné.xlsx"], items.Select(item => item.Path));
        Assert.NotNull(items[1].Refusal);
        Assert.Null(items[1].Fault);
    }

    private void Shell(string commands)
    {
        using var shell = Process.Start(new ProcessStartInfo("sh", ["-c", commands]) { WorkingDirectory = _folder.Of("returned") })!;
        shell.WaitForExit();
        Assert.Equal(0, shell.ExitCode);
    }
}
