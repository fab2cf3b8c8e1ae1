using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Tests.Counts;

/// <summary>Plurals of English; decimals other than 1 take the plural, as in The Chicago Manual of Style, 9.21 (from memory).</summary>
public class CountedTests
{
    [Theory]
    [InlineData(0, "0 workbooks")]
    [InlineData(1, "1 workbook")]
    [InlineData(1500, "1500 workbooks")]
    public void One_is_one_and_all_others_are_many(int count, string words) => Assert.Equal(words, Counted.Of(count, "workbook"));

    [Fact]
    public void What_takes_no_s_says_what_it_takes() => Assert.Equal("2 answers have", Counted.Of(2, "answer has", "answers have"));

    [Fact]
    public void Half_a_point_is_half_of_many() => Assert.Equal("points", Counted.Noun(0.5m, "point"));
}
