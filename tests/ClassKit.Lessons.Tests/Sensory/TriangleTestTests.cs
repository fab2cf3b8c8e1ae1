using ClassKit.Lessons.Sensory;

namespace ClassKit.Lessons.Tests.Sensory;

public sealed class TriangleTestTests
{
    /// <summary>
    /// ISO 4120:2004, Table A.1, minimum number of correct responses for a risk of 5 %, 1 % and 0.1 %; as printed in textbooks of sensory
    /// evaluation, from memory.
    /// </summary>
    [Theory]
    [InlineData(6, 5, 6, null)]
    [InlineData(7, 5, 6, 7)]
    [InlineData(8, 6, 7, 8)]
    [InlineData(9, 6, 7, 8)]
    [InlineData(10, 7, 8, 9)]
    [InlineData(12, 8, 9, 10)]
    [InlineData(15, 9, 10, 12)]
    [InlineData(18, 10, 12, 13)]
    [InlineData(20, 11, 13, 14)]
    [InlineData(24, 13, 15, 16)]
    [InlineData(30, 15, 17, 19)]
    [InlineData(36, 18, 20, 22)]
    [InlineData(48, 22, 25, 27)]
    [InlineData(60, 27, 30, 33)]
    public void The_fewest_right_answers_are_those_of_the_standard(int answers, int five, int one, int? tenth) =>
        Assert.Equal([five, one, tenth], TriangleTest.Risks.Select(risk => TriangleTest.FewestRight(answers, risk)));

    /// <summary>R 4.2.2: pbinom(right - 1, answers, 1/3, lower.tail = FALSE).</summary>
    [Theory]
    [InlineData(13, 24, 0.02844113)]
    [InlineData(8, 24, 0.57619535)]
    [InlineData(6, 6, 0.00137174)]
    [InlineData(400, 1000, 0.00000599)]
    public void The_chance_of_so_many_is_that_of_the_binomial_law(int right, int answers, double chance) =>
        Assert.Equal(chance, TriangleTest.ChanceOf(right, answers), 1e-8);

    [Fact]
    public void No_right_answer_is_certain_and_more_than_all_impossible()
    {
        Assert.Equal(1, TriangleTest.ChanceOf(0, 10));
        Assert.Equal(0, TriangleTest.ChanceOf(11, 10));
        Assert.Null(TriangleTest.FewestRight(2, 0.05));
    }
}
