using ClassKit.CellFormulas.Tests.Support;

namespace ClassKit.CellFormulas.Tests.Evaluating;

public class TextOrderTests
{
    [Theory]
    [InlineData("=\"é\"<\"f\"", "TRUE")] // an accent does not move a letter to the end
    [InlineData("=\"e\"<\"é\"", "TRUE")]
    [InlineData("=\"e\"=\"é\"", "FALSE")]
    [InlineData("=\"€\"<\"1\"", "TRUE")] // signs, digits, letters
    [InlineData("=\"9\"<\"a\"", "TRUE")]
    [InlineData("=\"B\">\"a\"", "TRUE")]
    [InlineData("=\"rye\"<\"rye flour\"", "TRUE")]
    public void Texts_are_in_the_order_of_an_English_dictionary(string formula, string value) => Check.Gives(value, formula);
}
