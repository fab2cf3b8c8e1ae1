using ClassKit.Exercises.Cohorts;

namespace ClassKit.Exercises.Tests.Cohorts;

/// <summary>Parts of a class, by counting.</summary>
public class ClassPartTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(ClassPart.Most, 1)]
    [InlineData(ClassPart.Most + 1, 2)]
    [InlineData(10_000, 80)]
    public void Everybody_is_in_one_part_in_the_order_of_the_class(int students, int parts)
    {
        var numbers = Enumerable.Range(1, students).ToList();
        var all = ClassPart.Of(students);

        Assert.Equal(parts, all.Count);
        Assert.Equal(numbers, all.SelectMany(part => part.Of(numbers)));
        Assert.All(all, part => Assert.InRange(part.Of(numbers).Count, 0, ClassPart.Most));
        Assert.Equal(parts, all.Select(part => part.Named("gradebook.xlsx")).Distinct().Count());
    }

    [Fact]
    public void Files_stand_in_the_order_of_the_class_where_programs_sort_them_by_name()
    {
        Assert.Equal("gradebook.xlsx", ClassPart.Of(24)[0].Named("gradebook.xlsx"));
        Assert.Equal("gradebook-02.xlsx", ClassPart.Of(200)[1].Named("gradebook.xlsx"));
        var names = ClassPart.Of(101 * ClassPart.Most).Select(part => part.Named("answer-key.html")).ToList();
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
    }
}
