using System.Text.RegularExpressions;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Lessons.Authored;

namespace ClassKit.LessonPacks.Tests.Consistency;

/// <summary>What a method or a caution takes into the hand is set out: the list of words is by hand, from the tools of a bakery.</summary>
public sealed class BenchToolsTests
{
    /// <summary>What a text says, and one of what must then be set out.</summary>
    private static readonly (string Says, string Tool)[] Tools =
    [
        (@"\bskewer\b", "skewer"),
        (@"\bknife\b", "knife"),
        (@"\bstrain(er)?\b", "strainer"),
        (@"\bsift\b", "sifter"),
        (@"\bwhisk\b", "whisk"),
        (@"\bbrush\b", "brush"),
        (@"\brack\b", "rack"),
        (@"\bboard beneath\b", "board"),
        (@"\b(into|from) (a|the) (jug|cup)\b|\begg into a cup\b", "jug|cup"),
        (@"\bwarm water\b", "basin"),
        (@"\bspoons?\b", "spoon|scoop"),
        (@"\btray\b", "tray"),
        (@"\bgloves?\b", "gloves"),
        (@"\bmelt\b", "pan|bowl"),
        (@"\bcut a cross\b", "knife"),
        (@"\bmark the level\b", "tape"),
        (@"\bon the small scale\b", "small scale"),
        (@"\bpaper cups\b", "paper cup"),
        (@"\bbeat butter\b", "mixer bowl"),
    ];

    public static TheoryData<string> Lessons =>
        ["one-tin-three-lifts", "thin-air-quick-breads", "no-oven-in-the-house", "one-dough-three-clocks"];

    [Theory]
    [MemberData(nameof(Lessons))]
    public void Whatever_a_card_takes_into_the_hand_is_set_out(string lesson)
    {
        var asked = 0;
        foreach (var bread in Formulas(lesson))
        {
            var said = string.Join(
                ' ',
                bread.Steps.Select(step => step.Text.Written).Concat(bread.Cautions.Select(caution => caution.Text.Written))
            );
            foreach (var (says, tool) in Tools.Where(tool => Regex.IsMatch(said, tool.Says, RegexOptions.IgnoreCase)))
            {
                asked++;
                Assert.True(
                    bread.Equipment.Any(set => Regex.IsMatch(set.Name, $@"\b({tool})s?\b", RegexOptions.IgnoreCase)),
                    $"{bread.Formula.Title} says {says} and sets out no {tool}"
                );
            }
        }
        Assert.True(asked > 8, $"{asked}");
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void A_step_that_weighs_on_the_small_scale_has_one(string lesson)
    {
        foreach (
            var bread in Formulas(lesson)
                .Where(bread => bread.Steps.Any(step => step.Work.Uses.Any(use => use.Kind == EquipmentKind.SmallScale)))
        )
            Assert.Contains(bread.Equipment, tool => tool.Name.Equals("Small scale", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>
    /// A brush keeps what it was dipped into: what goes from bread to bread carries egg or a seed's oil along. Common practice, no source.
    /// </summary>
    [Theory]
    [MemberData(nameof(Lessons))]
    public void No_brush_goes_from_one_bread_to_the_next(string lesson) =>
        Assert.DoesNotContain(Formulas(lesson).SelectMany(bread => bread.Equipment), tool =>
            tool.IsShared && tool.Name.Contains("brush", StringComparison.OrdinalIgnoreCase)
        );

    private static IReadOnlyList<LessonFormula> Formulas(string lesson) =>
        LessonReader.Read(Repository.PathOf("lessons", lesson)).Model!.Formulas;
}
