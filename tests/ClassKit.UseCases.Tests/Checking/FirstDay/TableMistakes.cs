using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>Roster, prices, ingredients and rubrics.</summary>
internal static class TableMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "a student is there twice",
            folder =>
                folder.Change(
                    "roster.csv",
                    "ben-example,Ben Example,ben@example.org",
                    "ben-example,Ben Example,ben@example.org\nben-example,Ben Example,ben@example.org"
                ),
            "roster.csv",
            5,
            "`ben-example` is in line 4 already",
            "an id of their own"
        ),
        new(
            "a student is there under two ids",
            folder =>
                folder.Change(
                    "roster.csv",
                    "ben-example,Ben Example,ben@example.org",
                    "ben-example,Ben Example,ben@example.org\nb.example,Ben Example,ben@example.org"
                ),
            "roster.csv",
            5,
            "has the e-mail address of `ben-example`",
            "one student"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the roster has no line of titles",
            folder => folder.Change("roster.csv", "id,name,email\n", ""),
            "roster.csv",
            2,
            "No column holds the students' names",
            "Call one column `name`"
        ),
        new(
            "a student without a name",
            folder => folder.Change("roster.csv", "ben-example,Ben Example,", "ben-example,,"),
            "roster.csv",
            4,
            "has no name",
            "Write the name"
        ),
        new(
            "a comma in a name",
            folder => folder.Change("roster.csv", "Ben Example", "Example, Ben"),
            "roster.csv",
            4,
            "4 fields, and the header has 3",
            "quotes"
        ),
        new(
            "a price of nothing",
            folder => folder.Change("prices.md", "| 4,90 |", "| 0 |"),
            "prices.md",
            14,
            "costs nothing",
            "Write what it costs"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a price was left out",
            folder => folder.Change("prices.md", "| 4,90 |", "| |"),
            "prices.md",
            14,
            "column `Price` is empty",
            "Fill it in"
        ),
        new(
            "a price for what no lesson uses",
            folder => folder.Change("prices.md", "| House sprinkle | jar", "| Rye flour | bag | 1 kg | 1,79 |\n| House sprinkle | jar"),
            "prices.md",
            null,
            "no lesson here uses: Rye flour",
            "other lessons"
        )
        {
            As = Weight.Noted,
        },
        new(
            "something that is used has no price",
            folder => folder.Change("prices.md", "| Whole milk | carton | 1 L | 1,15 |\n", ""),
            "prices.md",
            null,
            "no price for Whole milk",
            "Add a row"
        )
        {
            As = Weight.Noted,
        },
        new(
            "a pack in words",
            folder => folder.Change("prices.md", "| bag | 5 kg |", "| bag | 5 kilos |"),
            "prices.md",
            14,
            "holds `5 kilos`",
            "kg, g"
        ),
        new(
            "prices of another currency",
            folder => folder.Change("prices.md", "4,90", "$4.90"),
            "prices.md",
            14,
            "`$4.90`, and the list is in EUR",
            "one currency"
        ),
        new(
            "the same ingredient under two names",
            folder => folder.Change("prices.md", "| House sprinkle | jar", "| Plain flour | bag | 1 kg | 1,09 |\n| House sprinkle | jar"),
            "prices.md",
            20,
            "`All-purpose flour` is listed a second time",
            "Keep the pack"
        ),
        new(
            "water was left out",
            folder => folder.Change("ingredients.csv", "House sprinkle,other,5,", "House sprinkle,other,,"),
            "ingredients.csv",
            4,
            "The column `water` is empty",
            "g in 100 g"
        ),
        new(
            "more than there is room for",
            folder => folder.Change("ingredients.csv", "other,5,12,20,45,", "other,50,12,20,45,"),
            "ingredients.csv",
            4,
            "more than 100 g",
            "per portion"
        ),
        new(
            "a kind that is none",
            folder => folder.Change("ingredients.csv", "House sprinkle,other,", "House sprinkle,topping,"),
            "ingredients.csv",
            4,
            "holds `topping`",
            "other"
        ),
        new(
            "one's own ingredient is one that is known",
            folder =>
                folder.Change(
                    "ingredients.csv",
                    "0.1,almond; sesame,milled,an invented label",
                    "0.1,almond; sesame,milled,an invented label\nPlain flour,flour,12,10,1,1,0,wheat,,an invented label"
                ),
            "ingredients.csv",
            5,
            "another name of All-purpose flour",
            "Take the row out"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a share without its sign",
            folder => folder.Change("rubrics/marks.md", "accuracy: 40 %", "accuracy: 40"),
            "rubrics/marks.md",
            4,
            "`accuracy` is `40`, without a unit",
            "`40 %`"
        ),
        new(
            "a share above all",
            folder => folder.Change("rubrics/marks.md", "accuracy: 40 %", "accuracy: 400 %"),
            "rubrics/marks.md",
            4,
            "`accuracy` is 400 %",
            "from 0 to 100"
        ),
        new(
            "a word for newest",
            folder => folder.Change("rubrics/marks.md", "several versions: best", "several versions: latest"),
            "rubrics/marks.md",
            16,
            "`latest`",
            "best, newest"
        ),
        new(
            "a level without its points",
            folder => folder.Change("rubrics/bench.md", "Getting there (1)", "Getting there"),
            "rubrics/bench.md",
            6,
            "`Getting there` is no level",
            "`Not yet (0)`"
        ),
    ];
}
