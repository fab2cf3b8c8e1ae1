using System.Text.RegularExpressions;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Words;

namespace ClassKit.Lessons.Mixing;

/// <summary>
/// The step where wet meets dry, from the end of which soda, powder and yeast work. A step whose brackets say <c>mixes</c> is it; without
/// one, the last whose name begins with a word that bakers use for it and that stands before yeast has worked.
/// </summary>
public static class MixingStep
{
    /// <summary>The words that a name is to begin with, as lessons/README.md says them.</summary>
    public static IReadOnlyList<string> Words { get; } = ["Mix", "Knead", "Fold", "Combine", "Beat", "Blend"];

    /// <summary>
    /// In minutes: a shorter rest than this is part of mixing, as flour is left to take up water before it is kneaded. Common practice, no
    /// source.
    /// </summary>
    public const int ShortestRise = 30;

    /// <summary>Where it stands among the first steps of a method; −1 if none of them is it.</summary>
    /// <param name="formula">Whose method it is.</param>
    /// <param name="before">How many steps are looked at: those before the heat.</param>
    public static int Of(LessonFormula formula, int before)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var steps = formula.Steps;
        var said = Enumerable.Range(0, before).LastOrDefault(at => steps[at].Work.Mixes, -1);
        if (said >= 0)
            return said;
        var named = Named(formula, before, Begins);
        return named >= 0 ? named : Named(formula, before, Holds);
    }

    /// <summary>
    /// The steps before the heat that are named like mixing, and are not taken for it because yeast worked before them. Of these a lesson
    /// may mean one.
    /// </summary>
    public static IEnumerable<MethodStep> NotTaken(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var steps = formula.Steps;
        var before = steps.TakeWhile(step => !step.IsCooking).Count();
        return steps.Take(before).Any(step => step.Work.Mixes)
            ? []
            : steps.Take(before).Skip(RisenAfter(formula, before, Begins)).Where(step => Begins(step.Name));
    }

    private static int Named(LessonFormula formula, int before, Func<string, bool> isNamed) =>
        Enumerable.Range(0, RisenAfter(formula, before, isNamed)).LastOrDefault(at => isNamed(formula.Steps[at].Name), -1);

    /// <summary>How many steps stand before the first in which the yeast of a dough that is mixed has worked.</summary>
    private static int RisenAfter(LessonFormula formula, int before, Func<string, bool> isNamed)
    {
        if (!formula.Formula.IsFermented)
            return before;
        var mixed = Enumerable.Range(0, before).FirstOrDefault(at => isNamed(formula.Steps[at].Name), before);
        return Enumerable.Range(0, before).FirstOrDefault(at => at > mixed && IsRise(formula.Steps[at]), before);
    }

    private static bool IsRise(MethodStep step) =>
        step is { IsCooking: false, IsFreezing: false, Work.People: 0 } && step.MaxMinutes >= ShortestRise && !Autolyse.IsMatch(step.Name);

    /// <summary>
    /// Flour and water that stand before the dough is kneaded are part of its mixing, however long: yeast and salt come afterwards, or have
    /// hardly begun. Common practice, no source.
    /// </summary>
    private static readonly Regex Autolyse = Pattern(@"\b(?:autoly[sz](?:e|ed|es|ing|is)|fermentolyse)\b");

    private static bool Begins(string name) => BeginsPattern.IsMatch(name) && !Other.IsMatch(name);

    /// <summary>Of a method in which no name begins with one: <c>Final mix</c>, <c>Wet into dry, fold</c>.</summary>
    private static bool Holds(string name) => HoldsPattern.IsMatch(name) && !Other.IsMatch(name);

    // Beaten egg is a thing and no step: of what was done no form is taken.
    private const string Verbs = "(?:(?:mix|knead|fold|beat|blend)(?:s|es|ing)?|combin(?:e|es|ing))";

    private static readonly Regex BeginsPattern = Pattern($@"^\s*{Verbs}\b");
    private static readonly Regex HoldsPattern = Pattern($@"(?<![\w-]){Verbs}\b");

    /// <summary>
    /// What is folded while it rises was mixed before, what is made ahead of the dough is in it later, and what goes on or into a bread is
    /// none of it.
    /// </summary>
    private static readonly Regex Other = Pattern(
        WordForms.AnyOf(
            "stretch",
            "poolish",
            "biga",
            "sponge",
            "starter",
            "levain",
            "preferment",
            "scald",
            "soaker",
            "glaze",
            "topping",
            "filling",
            "icing",
            "frosting",
            "wash",
            "syrup",
            "crumble",
            "streusel"
        )
    );

    private static Regex Pattern(string pattern) => new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
