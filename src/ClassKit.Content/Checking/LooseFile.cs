using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Checking;

/// <summary>What is said of a file that nothing reads, by its name.</summary>
internal static class LooseFile
{
    private static readonly string[] Documents = [".docx", ".doc", ".odt", ".rtf", ".pages", ".pdf"];
    private static readonly string[] Pictures = [".png", ".jpg", ".jpeg", ".svg", ".gif", ".webp", ".heic", ".bmp"];
    private static readonly string[] Tables = [".csv", ".tsv", ".xlsx", ".ods"];

    /// <summary>
    /// True for what was most likely meant to be the file of a lesson: <c>lesson.md.txt</c>, <c>Lesson.md</c>, <c>lesson.docx</c>.
    /// </summary>
    public static bool IsLesson(string name) =>
        name != LessonReader.FileName
        && name.Split('.')[0].Equals("lesson", StringComparison.OrdinalIgnoreCase)
        && !Tables.Contains(Extension(name))
        && !Pictures.Contains(Extension(name));

    /// <summary>The file of a lesson under a name that is not looked for.</summary>
    public static Diagnostic OfLesson(Source file) =>
        new(
            file.Shown,
            null,
            $"This folder is not read as a lesson: the file of a lesson is called `{LessonReader.FileName}`, and this one `{file.Name}`",
            Documents.Contains(Extension(file.Name))
                    ? $"Save it as plain text under the name `{LessonReader.FileName}`: a word processor's own form cannot be read."
                : file.Name.EndsWith(".md.txt", StringComparison.OrdinalIgnoreCase)
                    ? $"Rename it to `{LessonReader.FileName}`. If you see no `.txt`, let your file manager show the endings of file names."
                : $"Rename it to `{LessonReader.FileName}`, in small letters."
        );

    /// <summary>Any other.</summary>
    /// <param name="file">The file.</param>
    /// <param name="inLesson">True within the folder of a lesson.</param>
    public static Diagnostic Of(Source file, bool inLesson)
    {
        var (name, extension) = (file.Name, Extension(file.Name));
        if (Path.GetFileNameWithoutExtension(name) is var inner && extension == ".txt" && Path.GetExtension(inner).Length > 0)
            return Said(
                "This file is not read: it ends in `.txt`, behind the ending that is looked for",
                $"Rename it to `{inner}`. If you see no `.txt`, let your file manager show the endings of file names."
            );
        if (name.StartsWith("roster", StringComparison.OrdinalIgnoreCase) && (extension is "" or ".txt" || Documents.Contains(extension)))
            return Said(
                "This is not read as a class list",
                "Save it from a spreadsheet program as .xlsx, .ods or CSV, `roster.csv`: a heading `name`, and a name in each row below it."
            );
        if (Documents.Contains(extension))
            return Said("A document is not read", "Put its text into one of the files that end in .md, or keep it elsewhere.");
        if (Pictures.Contains(extension))
            return Said("This picture is on no page", $"Show it where it belongs, `![What is to be seen]({name})`, or keep it elsewhere.");
        if (extension == ".xls")
            return Said(
                "A workbook of the old form is not read",
                "Save it as .xlsx or as CSV; a class list is checked if its name begins with `roster`."
            );
        if (Tables.Contains(extension))
            return Said(
                "This table is not checked",
                "A class list is checked if its name begins with `roster`, or if you name the file; ingredients are in `ingredients.csv`."
            );
        return extension == ".md"
            ? Said(
                inLesson ? "Nothing leads to this file" : "It is not clear what this file is",
                inLesson
                    ? "Link it from the lesson, or keep it elsewhere."
                    : "Keep notes elsewhere, or name the file by itself to learn what is missing."
            )
            : Said("Nothing reads this file", "Keep it elsewhere if it is not for ClassKit.", Weight.Noted);

        Diagnostic Said(string found, string expected, Weight weight = Weight.Doubtful) =>
            new(file.Shown, null, found, expected) { Weight = weight };
    }

    private static string Extension(string name) => Path.GetExtension(name).ToLowerInvariant();
}
