using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>From baker's percent to mass: the one place that knows that all flour together is 100 %.</summary>
internal static class BakersPercent
{
    private const double AllFlour = 100;

    /// <summary>What stands beside so much flour.</summary>
    /// <param name="flour">All the flour of the dough.</param>
    /// <param name="percent">Of the flour: 65 is 65 %.</param>
    public static Mass Beside(Mass flour, double percent) => flour * (percent / AllFlour);

    /// <summary>The flour beside which so much of an ingredient, or of the whole dough, stands.</summary>
    /// <param name="mass">Of the ingredient, or of the dough.</param>
    /// <param name="percent">What it is of the flour, above 0.</param>
    public static Mass FlourBeside(Mass mass, double percent) => mass * (AllFlour / percent);
}
