using ClassKit.CellFormulas.Functions;
using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Evaluating;

/// <summary>Every function against its case file.</summary>
public class FunctionCaseTests
{
    public static TheoryData<string> Functions => [.. FunctionRegistry.All.Select(function => function.Name).Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_function_has_a_case_file_and_every_case_file_a_function() =>
        Assert.Equal(FunctionRegistry.All.Select(function => function.Name).Order(StringComparer.Ordinal), CaseFile.Names("Functions"));

    [Theory]
    [MemberData(nameof(Functions))]
    public void A_function_gives_what_its_case_file_says(string function)
    {
        var file = CaseFile.Read("Functions", function);
        Assert.NotEmpty(file.Cases);
        Assert.Contains(file.Cases, one => one.Formula.Contains(function, StringComparison.Ordinal));
        var book = file.ToBook();
        var wrong = new List<string>();
        for (var at = 0; at < file.Cases.Count; at++)
        {
            var one = file.Cases[at];
            var evaluation = book.Evaluate(CaseFile.CellOf(at));
            if (!one.Holds(evaluation))
                wrong.Add(
                    $"{one.Formula} gives {evaluation.Status} {Literal.Write(evaluation.Value)} {evaluation.Reason}, expected {one.Expected}"
                );
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    [Fact]
    public void No_function_is_listed_as_known_elsewhere_and_evaluated_here() =>
        Assert.DoesNotContain(FunctionRegistry.All, function => KnownElsewhere.Contains(function.Name));

    [Fact]
    public void Every_case_in_which_LibreOffice_differs_says_why()
    {
        var silent = CaseFile
            .Names("Functions")
            .SelectMany(name =>
                File.ReadLines(Path.Combine(CaseFile.Folder, "Functions", name + ".cases"))
                    .Where(line => line.Contains("  ! ", StringComparison.Ordinal))
            )
            .Where(line => line.LastIndexOf("  # ", StringComparison.Ordinal) < line.LastIndexOf("  ! ", StringComparison.Ordinal));
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_case_file_begins_with_its_sources() =>
        Assert.All(CaseFile.Names("Functions"), name =>
            Assert.StartsWith(
                "# ",
                File.ReadLines(Path.Combine(CaseFile.Folder, "Functions", name + ".cases")).First(),
                StringComparison.Ordinal
            )
        );
}
