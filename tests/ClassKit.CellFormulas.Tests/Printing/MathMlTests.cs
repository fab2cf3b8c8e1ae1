using System.Xml.Linq;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Printing;

namespace ClassKit.CellFormulas.Tests.Printing;

public class MathMlTests
{
    private static readonly string[] Core =
    [
        "math",
        "merror",
        "mfrac",
        "mi",
        "mmultiscripts",
        "mn",
        "mo",
        "mover",
        "mpadded",
        "mphantom",
        "mprescripts",
        "mroot",
        "mrow",
        "ms",
        "mspace",
        "msqrt",
        "mstyle",
        "msub",
        "msubsup",
        "msup",
        "mtable",
        "mtd",
        "mtext",
        "mtr",
        "munder",
        "munderover",
        "semantics",
    ];

    [Theory]
    [InlineData("=flour*hydration", "<mrow><mi>flour</mi><mo>×</mo><mi>hydration</mi></mrow>")]
    [InlineData("=(a+b)/c", "<mfrac><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow><mi>c</mi></mfrac>")]
    [InlineData("=a-b", "<mrow><mi>a</mi><mo>−</mo><mi>b</mi></mrow>")]
    [InlineData("=SQRT(a)", "<msqrt><mi>a</mi></msqrt>")]
    [InlineData("=ROUND(a,1)", "<mrow><mi>a</mi><mspace width=\"0.5em\"></mspace><mtext>(rounded to 1 decimal place)</mtext></mrow>")]
    [InlineData(
        "=ROUNDUP(a,-1)",
        "<mrow><mi>a</mi><mspace width=\"0.5em\"></mspace><mtext>(rounded up to a multiple of 10)</mtext></mrow>"
    )]
    [InlineData("=B5", "<mi>B5</mi>")]
    [InlineData("=\"<b>\"", "<mtext>“&lt;b&gt;”</mtext>")]
    public void Formulas_are_set_with_names(string formula, string inner) =>
        Assert.Equal($"<math display=\"block\">{inner}</math>", MathMl.Write(CellFormula.Of(formula), _ => null));

    [Fact]
    public void Values_and_units_take_the_places_of_names() =>
        Assert.Equal(
            "<math display=\"block\"><mrow><mrow><mrow><mn>640</mn><mtext>\u00a0g</mtext></mrow><mo>×</mo><mrow><mn>70</mn><mtext>\u00a0%</mtext></mrow></mrow>"
                + "<mo>=</mo><mrow><mn>448</mn><mtext>\u00a0g</mtext></mrow></mrow></math>",
            MathMl.Write(
                CellFormula.Of("=flour*hydration"),
                name => name == "flour" ? MathMlOperand.Quantity("640", "g") : MathMlOperand.Quantity("70", "%"),
                MathMlOperand.Quantity("448", "g")
            )
        );

    [Fact]
    public void A_negative_number_after_an_operator_stands_in_parentheses() =>
        Assert.Contains(
            ">(</mo><mrow><mo form=\"prefix\">−</mo><mn>3</mn></mrow><mo",
            MathMl.Write(CellFormula.Of("=5-a"), _ => MathMlOperand.Quantity("-3")),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("=2*(a+b)", "false")]
    [InlineData("=2*(a/b+1)", "true")]
    public void Parentheses_grow_with_fractions_only(string formula, string stretchy) =>
        Assert.Contains($"stretchy=\"{stretchy}\">(", MathMl.Write(CellFormula.Of(formula), _ => null), StringComparison.Ordinal);

    [Theory]
    [InlineData("=IF(A1>=2,{1,2},-3^2%)&\"x\u0001<&\"")]
    [InlineData("=SUM(A1:B2,(C1,D1))+1.5E-20+LET(x,1,x)+Doughs[Flour]+PI()+@A:A+#N/A")]
    [InlineData("=PRODUCT(a,b+1)*SUM(a,-b)/POWER(a-1,2)*MROUND(a,5)*ABS(INT(b))*CEILING(a,b)*QUOTIENT(a,2)")]
    public void Everything_is_well_formed_and_of_core_elements_only(string formula)
    {
        var math = XElement.Parse(MathMl.Write(CellFormula.Of(formula), _ => null));
        Assert.All(math.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Core));
        Assert.All(math.Descendants("mfrac"), fraction => Assert.Equal(2, fraction.Elements().Count()));
        Assert.All(math.Descendants("msup"), power => Assert.Equal(2, power.Elements().Count()));
    }
}
