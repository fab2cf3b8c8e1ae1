using System.Diagnostics;
using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Dealing;
using ClassKit.Wording.Files;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Flags;

/// <summary>Flags in sentences to the instructor, with cells and values.</summary>
public static class FlagWords
{
    /// <summary>More of a student's files than these nobody wants to read of; all of them are accounted for one by one.</summary>
    private const int MostNamed = 8;

    /// <summary>The flag in one to three sentences.</summary>
    /// <param name="flag">The fact.</param>
    /// <param name="exercises">Those of the deal, in order: parts are named as its pages name them.</param>
    public static string Of(Flag flag, IReadOnlyList<Exercise> exercises) =>
        flag switch
        {
            Flag.GivenOverwritten(var place, var label, var dealt, var found) => string.Create(
                CultureInfo.InvariantCulture,
                $"{Quoted.Of(place)} ({label}) was dealt as {dealt} and now holds {(found is null ? "nothing" : Quoted.Of(found))}. It was graded with the dealt number."
            ),
            Flag.NameDiffers(var file, var named, var owner) =>
                $"{Quoted.Of(file)}: by its name this file is {named.Shown}'s, but the workbook inside was dealt to {owner.Shown}, for whom it was graded. Two files may have been swapped, or one student may have sent in for another.",
            Flag.NumbersOfAnother(var file, var bears, var other) =>
                $"{Quoted.Of(file)} bears {bears.Shown}’s id, but the numbers in it are those dealt to {other.Shown}. Each formula was graded with {bears.Shown}’s own numbers. It may be {other.Shown}’s workbook under another id: please ask both before it counts.",
            Flag.UnderOtherName(var file, var named, var owner) =>
                $"{Quoted.Of(file)}: by its name this file is {named.Shown}'s, but the workbook inside was dealt to {owner.Shown}, who sent one of their own. That one counts, and this one for nobody.",
            Flag.OwnerInferred(var file, var byNumbers) =>
                $"{Quoted.Of(file)}: the student's id is not in its cell any more; {(byNumbers ? "the numbers dealt to this student are in it" : "only the file's name says whose it is")}. Please confirm.",
            Flag.OtherSheet(var exercise, var sheet) =>
                $"{exercise} was answered on the sheet “{Quoted.Of(sheet)}”, and that one was graded. A sheet is easily copied or renamed.",
            Flag.SavedLate late => Late(late),
            Flag.SavedUnknown(var file) =>
                $"{Quoted.Of(file)} does not say inside when it was saved, so that nobody can tell from it whether it was late. It counts as in time.",
            Flag.SavedUnclear unclear =>
                $"{Quoted.Of(unclear.File)} does not say which clock its time is of. It was saved {unclear.Due.OnClocks(unclear.Saved)} or {unclear.Due.OnClocks(unclear.OrSaved)} on the class’s clocks; it was due {unclear.Due}. By one of the two it is late, by the other in time: it counts as in time. Please decide.",
            Flag.SavedAfterItCame(var file, var saved, var dated, var due) =>
                $"{Quoted.Of(file)} says that it was saved {due.OnClocks(saved)}, but the file itself was changed last {due.OnClocks(dated)}: one of the two clocks is wrong. It was due {due}. It counts as in time. Please decide.",
            Flag.SeveralFiles several => Several(several),
            Flag.PaperBeside(var student, var file, var paper, var paperCounts) =>
                $"{student.Shown} returned {Quoted.Of(file)} and answered on paper as well ({Quoted.Of(paper)}). {(paperCounts ? "The paper counts: the file earns less, or cannot be read" : "The file counts, which earns as much or more")}.",
            Flag.OfOtherDeal(var file, var why) => $"{Quoted.Of(file)}: {UncountedWords.Of(why)}",
            Flag.DealDoubtful { Others.Count: > 0 } doubt =>
                $"{Quoted.Of(doubt.File)}: sheets of several deals were put together in it ({string.Join(", ", doubt.Others)} besides {doubt.Own}). Its numbers are those dealt here, so it was graded. Please look at it.",
            Flag.DealDoubtful doubt =>
                $"{Quoted.Of(doubt.File)}: it carries this deal’s code, but most of its numbers are not those that were dealt to this student. It was graded with the dealt numbers. Please look at it.",
            Flag.FormulaToLookAt(var place, var formula) =>
                $"{Quoted.Of(place)} holds {Quoted.Of(formula)}, which could not be worked out here: please look at it yourself.",
            Flag.FitsAnotherVariant(var student, var other, var parts, var expected) =>
                $"{parts.Count} answers that are wrong for the numbers dealt to {student.Shown} are right for those dealt to {other.Shown}: {Parts(parts, exercises)}. {Chance(expected)}",
            Flag.SharedMistakes(var other, var parts, var both, var expected) =>
                $"{parts.Count} of {both} parts that both got wrong hold exactly what {other.Shown} wrote: {Parts(parts, exercises)}. {Chance(expected)}",
            Flag.SharedAuthor(var others) =>
                $"This workbook and that of {string.Join(", ", others.Select(other => other.Shown))} name the same person as the last to save them; other workbooks of the class do not.",
            Flag.UnreadableFile(var file, var refusal) => $"{Quoted.Of(file)}: {RefusalWords.Of(refusal)}",
            _ => throw new UnreachableException($"No words for {flag}."),
        };

    /// <summary>A fact that holds of several students alike, said once where all of them are named.</summary>
    /// <param name="flag">The fact as it was found of one of them.</param>
    /// <param name="students">How many they are; 2 or more.</param>
    /// <param name="exercises">Those of the deal, in order.</param>
    public static string OfAll(Flag flag, int students, IReadOnlyList<Exercise> exercises) =>
        flag switch
        {
            Flag.SharedMistakes(_, var parts, var both, var expected) => students == 2
                ? $"{parts.Count} of {both} parts that both got wrong hold exactly the same: {Parts(parts, exercises)}. {Chance(expected)}"
                : $"{parts.Count} parts that all {students} got wrong hold exactly the same: {Parts(parts, exercises)}. {Chance(expected)}",
            Flag.SharedAuthor => "These workbooks name the same person as the last to save them; other workbooks of the class do not.",
            _ => Of(flag, exercises),
        };

    private static string Late(Flag.SavedLate late) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Quoted.Of(late.File)} says that it was saved {late.Due.OnClocks(late.Saved)}, {Elapsed.Words(late.Saved - late.Due.At.UtcDateTime)} after it was due, {late.Due}. {(late.Off > 0 ? $"{Percent.Of(late.Off)} is taken off." : "Nothing is taken off.")}"
        );

    private static string Several(Flag.SeveralFiles several)
    {
        var others = several.Files.Count > MostNamed ? $" and {several.Files.Count - MostNamed} more" : "";
        return $"{several.Files.Count} files came from {several.Student.Shown}: {string.Join(", ", several.Files.Take(MostNamed).Select(Quoted.Of))}{others}. {Quoted.Of(several.Graded)} was graded.";
    }

    private static string Parts(IReadOnlyList<(string Exercise, string Part)> parts, IReadOnlyList<Exercise> exercises) =>
        string.Join(", ", parts.Select(part => PartLabel.Of(exercises, part.Exercise, part.Part)));

    /// <summary>A rate as people say it: about 1 in 40.</summary>
    private static string Chance(double expected) =>
        expected < 0.001
            ? "Chance alone brings this about in fewer than 1 in 1000 classes."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Chance alone brings this about in about 1 in {Math.Round(1 / expected, MidpointRounding.AwayFromZero):0} classes."
            );
}
