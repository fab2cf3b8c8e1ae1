using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Exercises;
using ClassKit.Content.Lessons;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Tests.Exercises;

/// <summary>A misconception's words, read as the student who made it: the step that they name has to be a step of the key.</summary>
public sealed partial class WordsLeadToTheKeyTests
{
    public static TheoryData<string> Files =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Repository.Root, "lessons"), "*.md", SearchOption.AllDirectories)
                .Where(file =>
                    Path.GetFileName(file) != "README.md"
                    && File.ReadAllText(file).Contains("\n### Misconception: ", StringComparison.Ordinal)
                )
                .Select(file => Path.GetRelativePath(Repository.Root, file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_number_that_the_words_tell_to_reckon_with_stands_in_the_key_with_that_sign(string file)
    {
        var exercise = ExerciseReader.Read(Path.Combine(Repository.Root, file)).Model!;
        foreach (var part in exercise.Parts)
        foreach (var misconception in part.Misconceptions)
        foreach (Match told in Told().Matches(misconception.Words).Where(told => !IsPercent(misconception.Words, told)))
            Assert.True(
                Keys(exercise).Any(key => Has(key, told.Groups["sign"].Value, told.Groups["number"].Value)),
                $"{file}, {part.Id}, {misconception.Id}: “{told.Value}” is no step of {part.Key.Text}"
            );
    }

    /// <summary>A student's sheet has cells and labels; <c>oven_f</c> stands nowhere on it.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void No_name_of_a_given_or_a_part_stands_in_the_words(string file)
    {
        var exercise = ExerciseReader.Read(Path.Combine(Repository.Root, file)).Model!;
        var names = exercise
            .Givens.Select(given => given.Id)
            .Concat(exercise.Parts.Select(part => part.Id))
            .Where(name => name.Contains('_', StringComparison.Ordinal))
            .ToList();
        foreach (var part in exercise.Parts)
        foreach (var misconception in part.Misconceptions)
            Assert.DoesNotContain(names, name => Regex.IsMatch(misconception.Words, $@"(?<![\w{{]){Regex.Escape(name)}(?![\w}}])"));
    }

    /// <summary>
    /// The mixture: ice takes its heat of melting, and each gram of it keeps a gram of tap water out (Koerner Co. ice table). Whoever warms
    /// the melted water instead adds its own temperature.
    /// </summary>
    [Fact]
    public void Whoever_counts_the_melting_alone_is_not_sent_to_the_next_wrong_turn()
    {
        var ice = LessonReader
            .Read(Repository.Lesson)
            .Model!.Exercises.Single(exercise => exercise.Id == "dough_temperature")
            .Parts.Single(part => part.Id == "ice");
        var words = ice.Misconceptions.Single(misconception => misconception.Id == "melting_only").Words;
        Assert.Contains("place of a gram of warm tap water", words.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("warmed as well", words, StringComparison.Ordinal);
    }

    /// <summary>Keys with every constant given written as its number; the step may be that of an earlier part.</summary>
    private static IEnumerable<string> Keys(Exercise exercise) =>
        exercise.Parts.Select(part =>
            exercise
                .Givens.Where(given => given.IsConstant)
                .Aggregate(part.Key.Text.Replace(" ", "", StringComparison.Ordinal), (text, given) =>
                    Regex.Replace(text, $@"\b{given.Id}\b", given.From.ToString(CultureInfo.InvariantCulture))
                )
        );

    private static bool Has(string key, string word, string number)
    {
        var n = Regex.Escape(number);
        return word.ToLowerInvariant() switch
        {
            "divide by" => Regex.IsMatch(key, $@"/\(?{n}(?![\d.])"),
            "multiply by" => Regex.IsMatch(key, $@"(\*\(?|[(^=]){n}(?![\d.])|(?<![\d.]){n}[)]?[*^]|1\+0\.1\)\^"),
            "add" or "plus" => Regex.IsMatch(key, $@"\+{n}(?![\d.])|(?<![\d.]){n}\+"),
            _ => Regex.IsMatch(key, $@"-\(?{n}(?![\d.])|(?<![\d.]){n}-"),
        };
    }

    /// <summary>“Divide by 100: 0.9 % is 0.009” tells how a percentage is typed, which no key has.</summary>
    private static bool IsPercent(string words, Match told) =>
        told.Groups["number"].Value == "100"
        && (words.Contains('%', StringComparison.Ordinal) || words.Contains("per cent", StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(
        @"\b(?<sign>divide by|multiply by|add|plus|minus|subtract)\s+(?<number>\d+(\.\d+)?)(?![\d.]*\s*%)(?!\d)(?!\s+minus)",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Told();
}
