using System.Text;
using ClassKit.Content.Exercises;
using ClassKit.Content.Sources;
using ClassKit.UseCases.Learning;
using ClassKit.Wording.Notes;

namespace ClassKit.UseCases.Tests.Learning;

public sealed class LearnMisconceptionsTests
{
    internal static Source Exercise => Source.Named(Repository.PathOf("lessons", "practice", "bakers-percentage", "pan_loaf.md"));

    internal static Source Proposals(string formula = "=flour+water_percent", string section = "pan_loaf: water") =>
        Memory(
            "proposed.md",
            $"""
            # Wrong turns to list

            ## {section}

            Met by 7 of 24.

            ### Misconception: added_the_share

            `{formula}`

            It looks as if you added. A share is multiplied.
            """
        );

    private static Source Memory(string name, string text) =>
        new Library(ListedTree.InMemory([KeyValuePair.Create(name, Encoding.UTF8.GetBytes(text))])).At(name);

    [Fact]
    public void An_exercise_learns_what_a_class_met_and_nothing_else_of_it_changes()
    {
        var learned = Assert.Single(LearnMisconceptions.Run(new(Proposals(), [Exercise]), new()).Model!);

        var read = ExerciseReader.Read(Memory("pan_loaf.md", learned.Text)).Model!;
        var before = ExerciseReader.Read(Exercise).Model!;
        var added = read.Parts.Single(part => part.Id == "water").Misconceptions[^1];
        Assert.Equal(("added_the_share", "=flour+water_percent"), (added.Id, added.Formula.ToString()));
        Assert.Equal("It looks as if you added. A share is multiplied.", added.Words);
        Assert.Equal(before.Parts.Sum(part => part.Misconceptions.Count) + 1, read.Parts.Sum(part => part.Misconceptions.Count));
        var kept = File.ReadAllLines(Exercise.Path).ToHashSet();
        Assert.Equal(
            ["### Misconception: added_the_share", "`=flour+water_percent`", "It looks as if you added. A share is multiplied."],
            learned.Text.Split('\n').Where(line => !kept.Contains(line))
        );

        // Told by its words: ids are for files, and several parts may have the same.
        var told = Assert.Single(NoteWords.Of(Assert.Single(LearnMisconceptions.Write([learned]).Notes)));
        Assert.StartsWith("pan_loaf.md lists “It looks as if you added”:", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_exercises_of_one_name_are_asked_about()
    {
        var refused = LearnMisconceptions.Run(new(Proposals(), [Exercise, Memory("other/pan_loaf.md", "# Pan loaf")]), new());

        Assert.Contains("Two exercises are called `pan_loaf`", Assert.Single(refused.Problems).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_numbers_keep_apart_from_the_key_is_refused_with_the_reason()
    {
        var refused = LearnMisconceptions.Run(new(Proposals("=water_percent*flour"), [Exercise]), new());
        Assert.False(refused.Succeeded);
        Assert.Contains("added_the_share", Assert.Single(refused.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_proposal_for_another_exercise_or_part_is_named()
    {
        Assert.Contains(
            "tin_loaf",
            Assert.Single(LearnMisconceptions.Run(new(Proposals(section: "tin_loaf: water"), [Exercise]), new()).Problems).Found,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "butter",
            Assert.Single(LearnMisconceptions.Run(new(Proposals(section: "pan_loaf: butter"), [Exercise]), new()).Problems).Found,
            StringComparison.Ordinal
        );
    }
}
