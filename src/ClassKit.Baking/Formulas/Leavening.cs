namespace ClassKit.Baking.Formulas;

/// <summary>What chiefly makes a bread rise.</summary>
public enum Leavening
{
    /// <summary>Water turning to steam, and air expanding.</summary>
    Steam,

    /// <summary>Carbon dioxide made by yeast from sugars.</summary>
    Yeast,

    /// <summary>Carbon dioxide set free from a carbonate by acid or heat.</summary>
    Chemical,

    /// <summary>Nothing that makes gas: a short paste, a cracker, a control. Air and steam alone widen it.</summary>
    None,
}
