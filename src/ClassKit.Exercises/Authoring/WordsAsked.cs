using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Exercises.Authoring;

/// <summary>What makes a part one that is answered in a student's own words. Nobody but the instructor judges it.</summary>
/// <param name="LookFor">What a good answer says, as the author wrote it: for whoever gives the points, and for the student
/// afterwards.</param>
public sealed record WordsAsked(string LookFor)
{
    /// <summary>Stands where other parts have their key; nothing is ever held against it.</summary>
    public static CellFormula NoKey { get; } = CellFormula.Of("=0");
}
