namespace ClassKit.Content.Tests;

public sealed class ShippedContentTests
{
    [Fact]
    public void Everything_that_is_shipped_reads_without_a_problem()
    {
        var check = ContentChecker.Check([Path.Combine(Repository.Root, "lessons"), Repository.Rubrics, Repository.Demo]);

        Assert.Empty(check.Problems);
        Assert.Contains(check.Items, item => item.Kind == ContentKind.Lesson);
        Assert.Contains(check.Items, item => item.Kind == ContentKind.MarkingScheme);
        Assert.Contains(check.Items, item => item.Kind == ContentKind.PracticalRubric);
        Assert.Contains(check.Items, item => item.Kind == ContentKind.ClassProfile);
        Assert.Contains(check.Items, item => item.Kind == ContentKind.Roster);
    }
}
