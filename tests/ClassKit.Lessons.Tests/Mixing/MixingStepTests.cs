using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Mixing;

/// <summary>Where the gas of a dough begins, by the names of its steps. Common practice, no source.</summary>
public sealed class MixingStepTests
{
    /// <summary>A number behind a name: it rests for so many minutes, and nobody has a hand in it.</summary>
    [Theory]
    [InlineData("Weigh, Mix, First rise 60, Shape, Proof 45, Brush with beaten egg", "Mix")]
    [InlineData("Weigh, Mix, First rise 60, Shape, Proof 45, Mix the glaze", "Mix")]
    [InlineData("Weigh, Mix, First rise 60, Mix topping, Proof 45, Unfold", "Mix")]
    [InlineData("Weigh, Mix, Knead, First rise 60, Fold, Proof 45", "Knead")]
    [InlineData("Weigh, Mix, Autolyse 40, Knead, First rise 60, Fold, Proof 45", "Knead")]
    [InlineData("Weigh, Combine, Long autolysis 90, Mix, First rise 60, Shape", "Mix")]
    [InlineData("Weigh, Mix, Rest 20, Knead, First rise 60, Stretch and fold, Proof 45", "Knead")]
    [InlineData("Weigh, Pre-mixed flour, Kneading, First rise 60, Shape", "Kneading")]
    [InlineData("Mix the poolish, Ripen 720, Mix, First rise 60, Shape", "Mix")]
    [InlineData("Scald, Cool 60, Mix, First rise 60, Beat in the raisins", "Mix")]
    [InlineData("Weigh, Final mix, First rise 60, Shape", "Final mix")]
    [InlineData("Mix, Ripen 720, Combine!, First rise 60, Shape", "Combine")]
    [InlineData("Weigh, Unfold, Brush with beaten egg, Mixer on", "")]
    public void It_is_the_last_that_its_name_begins_with_before_yeast_has_worked(string method, string mixing) =>
        Assert.Equal(mixing, Mixing(SampleLesson.Buns, method));

    /// <summary>Powder does nothing to a mix that stands: what is folded in behind a rest is still mixing.</summary>
    [Theory]
    [InlineData("Dry, Mix, Stand 40, Fold in the berries, Fill", "Fold in the berries")]
    [InlineData("Dry, Mix, Fill, Mix the crumble", "Mix")]
    public void Without_yeast_a_rest_ends_nothing(string method, string mixing) =>
        Assert.Equal(mixing, Mixing(SampleLesson.Muffins, method));

    [Theory]
    [InlineData("Mix, First rise 60, Fold, Proof 45", "Fold")]
    [InlineData("Mix, First rise 60, Fold!, Proof 45", "")]
    [InlineData("Mix, Autolyse 45, Knead, First rise 60, Shape", "")]
    [InlineData("Mix, First rise 60, Stretch and fold, Proof 45, Mix the glaze, Brush with beaten egg", "")]
    public void What_is_named_like_mixing_behind_a_rise_is_told_of(string method, string told) =>
        Assert.Equal(told, string.Join(", ", MixingStep.NotTaken(With(SampleLesson.Buns, method)).Select(step => step.Name)));

    [Fact]
    public void The_handbook_says_the_words_and_the_rest_that_is_a_rise()
    {
        var handbook = File.ReadAllText(Repository.PathOf("lessons", "README.md"));

        Assert.Contains($"begins with one of these words: {string.Join(", ", MixingStep.Words)}.", handbook, StringComparison.Ordinal);
        Assert.Contains($"a rise being {MixingStep.ShortestRise} min or more", handbook, StringComparison.Ordinal);
        Assert.All(MixingStep.Words, word => Assert.Equal(word, Mixing(SampleLesson.Buns, $"Weigh, {word}, First rise 60, Shape")));
    }

    private static string Mixing(LessonFormula bread, string method)
    {
        var formula = With(bread, method);
        return MixingStep.Of(formula, formula.Steps.Count) is var at and >= 0 ? formula.Steps[at].Name : "";
    }

    private static LessonFormula With(LessonFormula bread, string method) => bread with { Steps = [.. method.Split(", ").Select(Read)] };

    private static MethodStep Read(string written)
    {
        var words = written.Split(' ');
        return int.TryParse(words[^1], out var minutes)
            ? SampleLesson.Step(string.Join(' ', words[..^1]), minutes, minutes) with
            {
                Work = StepWork.Usual with { People = 0 },
            }
            : SampleLesson.Step(written.TrimEnd('!'), 3, 5) with
            {
                Work = StepWork.Usual with { Mixes = written.EndsWith('!') },
            };
    }
}
