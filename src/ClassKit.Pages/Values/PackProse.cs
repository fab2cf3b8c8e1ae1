using System.Text.RegularExpressions;
using ClassKit.Lessons;
using ClassKit.Pages.Values;

namespace ClassKit.Pages;

/// <summary>Puts computed values into a pack's authored texts, where they are named in braces.</summary>
public static partial class PackProse
{
    /// <summary>The pack with every <c>{name}</c> as its value, in the class's units; the same pack if there is nothing to put in.</summary>
    public static LessonPack Fill(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var values = ValueText.Of(pack);
        var lesson = LessonText.Map(pack.Lesson, (text, formula) => Name().Replace(text, match => Value(values, match, formula)));
        var told = lesson.Formulas.ToDictionary(formula => formula.Formula.Id);
        return pack with
        {
            Lesson = lesson,
            Cards = [.. pack.Cards.Select(card => card with { Formula = told[card.Formula.Formula.Id] })],
            Comparison = [.. pack.Comparison.Select(compared => compared with { Formula = told[compared.Formula.Formula.Id] })],
        };
    }

    /// <summary>In a formula's own file its values need no id before them. What stands for nothing is left as it is: reading the lesson has complained of it.</summary>
    private static string Value(Dictionary<string, string> values, Match match, LessonFormula? formula)
    {
        var name = match.Groups["name"].Value;
        return formula is not null && values.TryGetValue($"{formula.Formula.Id}.{name}", out var own) ? own
            : values.TryGetValue(name, out var value) ? value : match.Value;
    }

    [GeneratedRegex(@"\{(?<name>[a-z0-9_.]+)\}")]
    private static partial Regex Name();
}
