using System.Text;
using ClassKit.Content.Diagnostics;
using static ClassKit.UseCases.Tests.Checking.FirstDay.TeachingFolder;

namespace ClassKit.UseCases.Tests.Checking.FirstDay;

/// <summary>Files under other names, in other places, in other forms.</summary>
internal static class FileMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new(
            "the bread was written with a word processor",
            folder => folder.Rename(Formula, Formula.Replace(".md", ".docx", StringComparison.Ordinal)),
            Lesson,
            35,
            "There is no file",
            "save it as plain text (.txt"
        ),
        new(
            "the editor saved the lesson as lesson.md.txt",
            folder => folder.Rename(Lesson, Lesson + ".txt"),
            "lessons/milk-scones/lesson.md.txt",
            null,
            "This folder is not read as a lesson",
            "Rename it to `lesson.md`"
        ),
        new(
            "the lesson was written with a word processor",
            folder => folder.Rename(Lesson, "lessons/milk-scones/lesson.docx"),
            "lessons/milk-scones/lesson.docx",
            null,
            "is called `lesson.md`",
            "Save it as plain text"
        ),
        new(
            "the lesson's file begins with a capital",
            folder => folder.Rename(Lesson, "lessons/milk-scones/Lesson.md"),
            "lessons/milk-scones/Lesson.md",
            null,
            "is called `lesson.md`",
            "in small letters"
        ),
        new(
            "an exercise was saved as text",
            folder => folder.Rename(Wet, Wet + ".txt"),
            Lesson,
            42,
            "There is no file `lessons/milk-scones/exercises/how_wet.md`",
            "rename it to `how_wet.md`"
        ),
        new(
            "the folder of breads has another name",
            folder => folder.Rename("lessons/milk-scones/formulas", "lessons/milk-scones/formula"),
            Lesson,
            35,
            "There is no file `lessons/milk-scones/formulas/milk_scones.md`",
            "It is in the folder `formula`"
        ),
        new(
            "a second bread is in no list",
            folder => folder.Copy(Formula, "lessons/milk-scones/formulas/oat_scones.md"),
            Lesson,
            31,
            "`formulas/oat_scones.md` is not listed",
            "Add a link to it"
        ),
        new(
            "a file of notes lies in the lesson",
            folder => folder.Put("lessons/milk-scones/ideas.md", "# Ideas\n\nMore butter?\n"),
            "lessons/milk-scones/ideas.md",
            null,
            "Nothing leads to this file",
            "Link it from the lesson"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a picture was put in and nowhere shown",
            folder => folder.Put("lessons/milk-scones/scone.jpg", [0xFF, 0xD8, 0xFF, 0xE0]),
            "lessons/milk-scones/scone.jpg",
            null,
            "is on no page",
            "![What is to be seen](scone.jpg)"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "a lesson was copied and its title left",
            folder => folder.Copy("lessons/milk-scones", "lessons/cream-scones"),
            Lesson,
            null,
            "so is lessons/cream-scones/lesson.md",
            "a title of its own"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the roster has a name of the school's",
            folder => folder.Rename("roster.csv", "Class list 2A.csv"),
            "Class list 2A.csv",
            null,
            "This table is not checked",
            "begins with `roster`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the roster is a plain text",
            folder => folder.Rename("roster.csv", "roster.txt"),
            "roster.txt",
            null,
            "This is not read as a class list",
            "Save it from a spreadsheet program as .xlsx, .ods or CSV"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the roster was written with a word processor",
            folder => folder.Rename("roster.csv", "Roster 2A.docx"),
            "Roster 2A.docx",
            null,
            "This is not read as a class list",
            "`roster.csv`: a heading `name`"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the roster is an old workbook",
            folder => folder.Remove("roster.csv").Put("roster.xls", [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]),
            "roster.xls",
            null,
            "old form",
            "Save it as .xlsx or as CSV"
        )
        {
            As = Weight.Doubtful,
        },
        new(
            "the price list was given another name",
            folder => folder.Rename("prices.md", "price list.md"),
            "class.md",
            32,
            "There is no file `prices.md`",
            "`price list.md` beside it is a price list"
        ),
        new(
            "a file was saved as UTF-16",
            folder =>
                folder.Put("class.md", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(folder.Text("class.md"))).ToArray()),
            "class.md",
            null,
            "saved as UTF-16",
            "Save it as UTF-8"
        ),
        new("a file was emptied", folder => folder.Put("rubrics/bench.md", ""), "rubrics/bench.md", null, "The file is empty", "Write it"),
        new(
            "the marks were taken away",
            folder => folder.Remove("rubrics/marks.md"),
            Lesson,
            9,
            "There is no file `rubrics/marks.md`",
            "Check the spelling"
        ),
        new(
            "a copy of the marks lies beside them",
            folder => folder.Copy("rubrics/marks.md", "rubrics/marks (copy).md"),
            "rubrics/marks (copy).md",
            null,
            "No lesson here uses this marking scheme",
            "if you changed this one"
        )
        {
            As = Weight.Noted,
        },
        new(
            "an exercise was copied under another name and linked",
            folder =>
                folder
                    .Copy(Wet, "lessons/milk-scones/exercises/how_wet_2.md")
                    .Change(
                        Lesson,
                        "- [How wet is it?](exercises/how_wet.md)",
                        "- [How wet is it?](exercises/how_wet.md)\n- [How wet is it?](exercises/how_wet_2.md)"
                    ),
            "lessons/milk-scones/exercises/how_wet_2.md",
            null,
            "and so is lessons/milk-scones/exercises/how_wet.md",
            "a title of its own"
        )
        {
            As = Weight.Doubtful,
        },
    ];
}
