using ClassKit.CellFormulas.Formulas;
using ClassKit.Wording.Answers;

namespace ClassKit.Wording.Tests.Answers;

public sealed class WrongTurnNameTests
{
    [Theory]
    [InlineData("You left out the friction. The mixer warms the dough.", "You left out the friction")]
    [InlineData("Take 0.5 g of it. Then weigh.", "Take 0.5 g of it")]
    [InlineData("That is the mass, e.g. of flour. Divide.", "That is the mass, e.g. of flour")]
    [InlineData("Which is it? Both.", "Which is it?")]
    [InlineData("No stop", "No stop")]
    public void A_wrong_turn_is_called_by_its_first_sentence(string words, string name) =>
        Assert.Equal(name, WrongTurnName.Of(new("left_out_friction", CellFormula.Of("=1"), words)));
}
