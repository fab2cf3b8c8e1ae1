using System.Text;
using ClassKit.UseCases.BenchMarks;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.BenchMarks;

/// <summary>What two markers saw is compared of everybody, whatever was arranged.</summary>
public sealed class CompareMarkersTests
{
    private const string Head =
        "student,Safe and clean work,Weighing,Mixing,Filling,Timing and order,Judging doneness,Measuring and recording,Explaining,comment\n";

    /// <summary>Ada leaves Weighing out of one work: her other seven criteria are compared, as Ben's eight are.</summary>
    [Fact]
    public void A_student_who_leaves_a_criterion_out_is_compared_on_the_others()
    {
        using var folder = new TemporaryFolder();
        string Of(string name, string text)
        {
            folder.Write(name, Encoding.UTF8.GetBytes(text));
            return folder.Of(name);
        }
        var roster = Of("roster.csv", "id,name,leaves out\nada,Ada Berg,Weighing for Bench day one\nben,Ben Okoye,\n");
        string Marks(string name, string level) =>
            Of(
                name,
                Head
                    + $"ada,{level},,{level},{level},{level},{level},{level},{level},\n"
                    + $"ben,{string.Join(',', Enumerable.Repeat(level, 8))},\n"
            );

        var request = CompareMarkers.Read(
            Path.Combine(Repository.Root, "rubrics", "bench-work.md"),
            Path.Combine(Repository.Root, "demo-cohort", "class.md"),
            roster,
            Marks("one.csv", "Secure"),
            Marks("two.csv", "Developing")
        );

        Assert.Empty(request.Problems);
        Assert.Equal(["ada", "ben"], request.Model!.Marking.First.Places.Keys.Order());
        Assert.Equal(["ada", "ben"], request.Model.Marking.Second!.Places.Keys.Order());
        Assert.Equal(2, CompareMarkers.Run(request.Model, Run.Unwatched).Agreement.Students);
    }
}
