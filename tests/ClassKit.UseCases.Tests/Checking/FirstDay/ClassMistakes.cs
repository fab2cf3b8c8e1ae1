using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>The class and its kitchen.</summary>
internal static class ClassMistakes
{
    private static readonly string Teams =
        "id,name,team\n" + string.Concat(Enumerable.Range(1, 12).Select(number => $"s{number},Student {number},{"ABC"[number % 3]}\n"));

    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "a number as a word",
            folder => folder.Change("class.md", "students: 12", "students: twelve"),
            "class.md",
            5,
            "`students` is `twelve`, which is not a number",
            "Write digits"
        ),
        new(
            "a food in the place of what is declared of it",
            folder => folder.Change("class.md", "allergies: []", "allergies: [jam]"),
            "class.md",
            26,
            "`jam` is not an allergen",
            "perhaps sulphites"
        ),
        new(
            "a key without its s",
            folder => folder.Change("class.md", "students: 12", "student: 12"),
            "class.md",
            5,
            "`student` is not a key",
            "Did you mean `students`"
        ),
        new(
            "a key with a capital",
            folder => folder.Change("class.md", "kitchen: My", "Kitchen: My"),
            "class.md",
            3,
            "`Kitchen` is not a key",
            "Did you mean `kitchen`"
        ),
        new(
            "no colon",
            folder => folder.Change("class.md", "teams: 4", "teams 4"),
            "class.md",
            6,
            "`teams 4` has no colon",
            "`key: value`"
        ),
        new(
            "no blank behind the colon",
            folder => folder.Change("class.md", "teams: 4", "teams:4"),
            "class.md",
            6,
            "`teams:4` has no blank behind its colon",
            "Write `teams: 4`"
        ),
        new(
            "more teams than students",
            folder => folder.Change("class.md", "teams: 4", "teams: 14"),
            "class.md",
            6,
            "14 teams for 12 students",
            "Every team needs a student"
        ),
        new(
            "a period in hours as one says it",
            folder => folder.Change("class.md", "period: 120 min", "period: 2 hours"),
            "class.md",
            10,
            "`period` has the unit `hours`",
            "units known here: min, h"
        ),
        new(
            "a temperature without its unit",
            folder => folder.Change("class.md", "temperature: 22 °C", "temperature: 22"),
            "class.md",
            14,
            "`kitchen temperature` is `22`, without a unit",
            "`22 °C` or `22 °F`"
        ),
        new(
            "degrees of the other scale",
            folder => folder.Change("class.md", "temperature: 22 °C", "temperature: 72 °C"),
            "class.md",
            14,
            "72 °C, hotter than anybody can work in",
            "write `72 °F`"
        ),
        new(
            "degrees of the other scale, the other way round",
            folder => folder.Change("class.md", "temperature: 22 °C", "temperature: 22 °F"),
            "class.md",
            14,
            "-5.6 °C, colder than anybody bakes in",
            "write `22 °C`"
        ),
        new(
            "a scale without its unit",
            folder => folder.Change("class.md", "\nscale: 1 g", "\nscale: 1"),
            "class.md",
            18,
            "`scale` is `1`, without a unit",
            "`1 g`, `1 kg`, `1 oz` or `1 lb`"
        ),
        new(
            "a clock as one says it",
            folder => folder.Change("class.md", "starts: 09:00", "starts: 9 o'clock"),
            "class.md",
            12,
            "is no time of the day",
            "`starts: 2:30 pm`"
        ),
        new(
            "paper by its everyday name",
            folder => folder.Change("class.md", "paper: A4", "paper: US letter"),
            "class.md",
            30,
            "`paper` is `US letter`",
            "letter"
        ),
        new(
            "units by their name",
            folder => folder.Change("class.md", "units: metric", "units: grams"),
            "class.md",
            28,
            "`units` is `grams`",
            "both, metric, us"
        ),
        new(
            "allergies as a sentence",
            folder => folder.Change("class.md", "allergies: []", "allergies: peanuts and milk"),
            "class.md",
            26,
            "`peanuts and milk` is not an allergen",
            "`allergies: [peanuts, milk]`"
        ),
        new(
            "equipment without numbers",
            folder => folder.Change("class.md", "[4 scales, 4 small scales]", "[4 scales, mixers]"),
            "class.md",
            24,
            "`equipment` holds `mixers`",
            "Write how many of what"
        ),
        new(
            "equipment nobody plans with",
            folder => folder.Change("class.md", "[4 scales, 4 small scales]", "[4 scales, 4 small scales, 12 aprons]"),
            "class.md",
            24,
            "`aprons` is not equipment",
            "burners"
        ),
        new(
            "the second line of --- was lost",
            folder => folder.Change("class.md", "prices: prices.md\n---\n", "prices: prices.md\n"),
            "class.md",
            1,
            "never end",
            "another line of `---`"
        ),
        new(
            "the title was lost",
            folder => folder.Change("class.md", "# My first class\n", ""),
            "class.md",
            null,
            "There is no title",
            "`# Title`"
        ),
        new(
            "the list has teams that the class does not read",
            folder => folder.Put("roster.csv", Teams),
            "class.md",
            null,
            "`roster.csv` has 3 teams, A, B, C, and the class has 4 of its own",
            "Add `roster: roster.csv`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the class has another number of teams than its list",
            folder => folder.Put("roster.csv", Teams).Change("class.md", "prices: prices.md", "prices: prices.md\nroster: roster.csv"),
            "class.md",
            6,
            "`teams` is 4, and the class list has 3: A, B, C",
            "The list counts"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a period too short for the lesson",
            folder => folder.Change("class.md", "period: 120 min", "period: 45 min"),
            TeachingFolder.Lesson,
            null,
            "does not fit the 45 min of My first class",
            "20 min longer: 65 min"
        )
        {
            As = Weight.Doubtful,
        },
    ];
}
