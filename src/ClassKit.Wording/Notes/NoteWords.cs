using System.Diagnostics;
using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Benches;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Files;
using ClassKit.Wording.Gradebooks;
using ClassKit.Wording.Items;
using ClassKit.Wording.Numbers;
using ClassKit.Wording.Papers;
using ClassKit.Wording.Quoting;
using ClassKit.Wording.Regrading;
using ClassKit.Wording.Terms;

namespace ClassKit.Wording.Notes;

/// <summary>What an instructor is told of work that succeeded: a line or more for each note.</summary>
public static class NoteWords
{
    /// <summary>The lines; those that belong to the one before them begin with two spaces.</summary>
    public static IEnumerable<string> Of(Note note) =>
        note switch
        {
            Note.StillNamed(var traces, var fate) => TraceWords.Of(traces, fate),
            Note.TakenOver(var points, var exercises) =>
            [
                $"{Answers(points.Count)} typed into the gradebook {Counted.Noun(points.Count, "is", "are")} taken over into corrections.csv:",
                .. points.Select(typed => Line(typed, exercises)),
            ],
            Note.Waiting(var points, var exercises) =>
            [
                $"{Answers(points.Count)} typed into the gradebook {Counted.Noun(points.Count, "waits", "wait")} to be taken over, and the grades go without:",
                .. points.Select(typed => Line(typed, exercises)),
            ],
            Note.NotMeasured(var reasons) => reasons,
            Note.Changed(var change) => ChangeWords.Of(change),
            Note.HandedOver(var bundle, var taken, var left) => BundleWords.HandedOver(bundle, taken, left),
            Note.Frozen frozen => FrozenWords.Of(frozen),
            Note.Received(var files, var left) => BundleWords.Received(files, left),
            _ => [Sentence(note)],
        };

    private static string Sentence(Note note) =>
        note switch
        {
            Note.OfStep(var step) => Of(step),
            Note.SameDeal(var code) => $"The same deal as before, {code}.",
            Note.AddedToDeal(var code, var students) =>
                $"Added to deal {code}: {string.Join(", ", students.Select(student => student.Name))}. The numbers and files of all others are as they were.",
            Note.SetChosen(var exercises) => Of(exercises),
            Note.SpreadOut(var spread) => Of(spread),
            Note.Expected expected => Of(expected),
            Note.NothingExpected => "What the class can be expected to earn nobody can say: no earlier class was asked any of it.",
            Note.Dealt(var workbooks, var exercises, var seed, var record) =>
                $"{Counted.Of(workbooks, "workbook")} of {Counted.Of(exercises, "exercise")}, seed {seed}. Hand out only what is in workbooks, or in sheets for work on paper; keep {record} and the key to yourself.",
            Note.InParts(var first, var last, var parts) => Invariant(
                $"The class is too large for one workbook or page of everybody: there are {parts} of each kind, {first} to {last} and so on, with up to {ClassPart.Most} students in the order of the class."
            ),
            Note.VariantsShared(var variants) => Invariant(
                $"Exercise {variants.Exercise.Id}: {variants.Students} students share a variant with someone else, because its givens allow only {variants.Variants}. Widen a given's range to tell them apart."
            ),
            Note.AllExercisesCount(var best, var exercises) => Invariant(
                $"The marking scheme counts the {best} best exercises, and a student has {exercises}: all of them count."
            ),
            Note.AllPointsCount(var most, var points) => Invariant(
                $"The marking scheme counts at most {most} points, and a student can earn {points:0.##}: all of them count."
            ),
            Note.PracticeMade(var pages, var seed) =>
                $"{(pages is { } many ? Counted.Of(many, "page") : "One page")} to practise with, seed {seed}. The answers are in the page: it is for practice, not for work that is handed in.",
            Note.LeftOutOfPractice(var what) => what.GivesAway
                ? $"Exercise {what.Exercise.Id} is left out: its answers are the same for everybody, and it is still to be handed in."
                : $"Exercise {what.Exercise.Id} is left out: every variant of it was dealt, and it is still to be handed in. Widen a given's range to practise it.",
            Note.FollowingUp(var students, var minutes, var seed) =>
                $"{Counted.Of(students, "student practises", "students practise")} what they missed, up to {minutes} minutes each, seed {seed}. Every page has a workbook with the same numbers, which can be graded like any other.",
            Note.NothingMissed(var students) => $"Nothing was missed by {Names(students)}.",
            Note.NothingGraded(var students) => $"Nothing is known of {Names(students)}, of whom nothing was graded.",
            Note.OtherDeals others => OtherDealWords.Mostly(others),
            Note.Graded graded => Of(graded),
            Note.Measured(var teams) => $"Measurements of {Counted.Of(teams, "team")}.",
            Note.OnPaper(var students) => $"{Counted.Of(students, "student is", "students are")} graded from paper.",
            Note.PaperFault(var what) => $"On paper, {PaperFaultWords.Of(what)}",
            Note.NotJudged(var file, var fault) =>
                $"{Quoted.Of(file)} could not be judged, by a mistake of ours: look at it yourself, and please report “{fault}”. It counts neither for nor against anyone.",
            Note.Corrected(var answers) => $"{Counted.Of(answers, "answer has", "answers have")} the points of your corrections.",
            Note.WrittenAnswers(var answers, var page) => answers == 1
                ? $"One answer in own words waits for you, and counts neither for nor against until you type its points: read it in {page}."
                : $"{answers} answers in own words wait for you, and count neither for nor against until you type their points: read them side by side in {page}.",
            Note.Unread(var gradebook) => GradebookWords.Of(gradebook),
            Note.Flagged(var students) =>
                $"{Counted.Of(students, "student has", "students have")} something to look at; the class report lists it.",
            Note.TeachAgain(var part) =>
                $"Teach again first: {part.Exercise.Title}, “{part.Part.Ask}” ({part.Understood} of {part.Judged} {(part.Part.Choice is null ? "show the method" : "chose rightly")}).",
            Note.NotGoneBy(var problems) =>
                $"The earlier grades are not gone by, so that answers are judged anew and nothing is known from them of when work was due: {string.Join(' ', problems)}",
            Note.DueAsBefore(var due, var asDealt) => $"Due {due}, {(asDealt ? "as dealt" : "as on record")}.",
            Note.DueAsNamed(var due) => Of(due),
            Note.ExcusedFrom(var students) =>
                $"Excused, so that nothing was dealt to {string.Join(", ", students.Select(student => student.Shown))}: it does not count against them.",
            Note.LeavesOutNothing(var student, var ids) =>
                $"{student.Shown} is to leave out {string.Join(" and ", ids)}, which nobody was dealt here: look whether the name is right.",
            Note.Resit(var replaced, var students) =>
                $"A resit of deal {replaced} with numbers of its own for {Counted.Of(students, "student", "students")}. Name the two graded folders one behind the other in the term, the first sitting first.",
            Note.Arranged(var students) =>
                $"Arranged: {string.Join("; ", students.Select(ArrangementWords.Of))}. Their workbooks, sheets and feedback follow.",
            Note.DueChanged(var before, var now, var asDealt) =>
                $"{(asDealt ? "As dealt" : "On record")} it was due {before}; from now on {(now is null ? "it may come at any time" : $"it is due {now}")}.",
            Note.JudgingNotKnown =>
                "The grades on record do not say how they were judged, so answers are judged as they are today, on fresh inputs of the deal's seed.",
            Note.OtherJudge(var before, var now) =>
                $"The grades on record were judged by version {before} of the judge; this is version {now}. Where an outcome changes without another reason, that is why.",
            Note.OtherInputs(var exercise) =>
                $"{exercise.Title}: the fresh inputs on record do not fit the exercise as it is now, so others were drawn.",
            Note.Changes(var students) => students switch
            {
                0 => "Nobody's points or outcomes change.",
                1 => "One student changes:",
                _ => $"{students} students change:",
            },
            Note.Packed packed =>
                $"{packed.Lesson} for {packed.Class}: {Counted.Of(packed.Students, "student")} in {Counted.Of(packed.Teams, "team")}. Open {packed.First}.",
            Note.Cut(var cut) => PlanNoticeWords.Of(cut),
            Note.NoPlan(var planning, var bench) =>
                $"The lesson does not fit {bench.Time.PeriodMinutes} min, and no part of it that can be moved or left out makes it: the pack has no bench plan, no run sheets and no minutes. {PlanNoticeWords.Why(planning.Conflict, planning.MissingMinutes, bench)}{PlanNoticeWords.WhatHelps(planning, bench)}",
            Note.Unlike(var differences, var bench) => SeriesDifferenceWords.Of(differences, bench),
            Note.Rehearsed(var students, var report) => Invariant(
                $"{students} invented students, {report.Answers} answers: the grader judged {report.GradedRight} of them as they were made. Half of them are done after about {report.DoneAfter(0.5):0} minutes, nine in ten after {report.DoneAfter(0.9):0}."
            ),
            Note.Learned(var file, var misconceptions, var before, var after, var draws) => Invariant(
                $"{file} lists {string.Join(", ", misconceptions.Select(one => $"“{WrongTurnName.Of(one)}”"))}: {after} of {draws} draws keep all its misconceptions apart from the key and from each other, {before} did without. Put it in the place of the old file."
            ),
            Note.Tabulated(var results) =>
                $"{Counted.Of(results, "result")} in the tables of OneRoster 1.2 (1EdTech). Students go by the ids of the roster: they must be the school's own. Zip the tables to hand them on.",
            Note.UngradedLeftOut(var works) =>
                $"{string.Join(", ", works)} {Counted.Noun(works.Count, "is", "are")} left out: nothing of {Counted.Noun(works.Count, "it", "them")} has been graded, and nobody knows the points possible.",
            Note.Banked(var items, var exercises, var package) =>
                $"{Counted.Of(items, "item")} of {Counted.Of(exercises, "exercise")} in {package}, a package of 1EdTech QTI 3.0. They ask for numbers only: whether a formula was used, no such item can tell.",
            Note.OfBank(var bank) => BankNoteWords.Of(bank),
            Note.Undecided(var work, var answers, var corrections) =>
                $"{work}: {Counted.Of(answers, "answer")} {Counted.Noun(answers, "is", "are")} left to you and {Counted.Noun(answers, "counts", "count")} neither for nor against. Decide them in {corrections} and grade again.",
            Note.MarkedTwice(var work, var page) => $"{work} was marked by two: see {page} before the marks count.",
            Note.LeftTheClass(var work, var students) =>
                $"{string.Join(", ", students.Select(student => student.Shown))} {Counted.Noun(students.Count, "has", "have")} grades of {work} and {Counted.Noun(students.Count, "is", "are")} no longer on the class list: these grades are left out of the term.",
            Note.NotMarkedThrough(var work, var students) =>
                $"{work} is not marked in every criterion for {string.Join(", ", students.Select(student => student.Shown))}: it does not count for them until it is.",
            Note.MarkedAndExcused(var work, var students) =>
                $"{work}: {Phrases.List([.. students.Select(student => student.Shown)])} {Counted.Noun(students.Count, "has", "have")} a mark and {Counted.Noun(students.Count, "is", "are")} excused as well. The excuse counts, and the mark does not; where it is to count, take the word away.",
            Note.CameBackEmpty(var students, var corrections) =>
                $"{Counted.Noun(students.Count, "A workbook", "Workbooks")} came back with nothing in {Counted.Noun(students.Count, "it", "them")}, from {Phrases.List([.. students.Select(student => student.Shown)])}. No term counts {Counted.Noun(students.Count, "it", "them")} until you say so: where it is handed in like that, give one answer 0 points in {corrections}, with your reason.",
            Note.EmptyLeftOut(var work, var students) =>
                $"{work}: the {Counted.Noun(students.Count, "workbook", "workbooks")} of {Phrases.List([.. students.Select(student => student.Shown)])} came back empty, and nobody has said whether {Counted.Noun(students.Count, "it is", "they are")} handed in: no mark yet, and the grade may still change.",
            Note.Weighed(var graded, var students) =>
                $"{graded} of {Counted.Of(students, "student")} {Counted.Noun(graded, "has", "have")} a grade.",
            Note.Provisional(var students) =>
                $"{Counted.Of(students, "grade")} may still change: marks are to come, or answers are to be decided on. Each student's page says what is needed.",
            Note.HeldBack(var students) =>
                $"{Counted.Of(students, "student")} {Counted.Noun(students, "is", "are")} held back by something that must be passed.",
            Note.Entered(var named, var students, var deal, 1) =>
                $"{named}: the grades of {Counted.Of(students, "student")} in deal {deal} are on record.",
            Note.Entered(var named, var students, var deal, var number) =>
                $"{named}: the grades of {Counted.Of(students, "student")} in deal {deal} are on record as grading {number}, which stands from now on. The earlier ones stay on record.",
            Note.EnteredBefore(var deal) => $"Just these grades of deal {deal} were on record already; nothing was changed.",
            Note.MeasurementsEntered(var named, var lesson, var day, var values) => Invariant(
                $"{Counted.Of(values, "measurement", "measurements")} of {named}, {lesson} on {day:yyyy-MM-dd}, are on record."
            ),
            Note.LessonEntered(var named, var lesson, var day) => Invariant(
                $"{named} was given {lesson} on {day:yyyy-MM-dd}; that is on record."
            ),
            Note.TermEntered(var named, var title, var works, var marks) =>
                $"{named}: {title} is on record with {Counted.Of(works, "work")} and {Counted.Of(marks, "mark")} from the bench and the table of marks.",
            Note.MarksTakenOff(var marks) =>
                $"{Counted.Of(marks, "mark")} went off the record, since the files have {Counted.Noun(marks, "it", "them")} no longer. What {Counted.Noun(marks, "it", "they")} said stays among the changes of each student.",
            Note.MarksWithoutFile(var works) =>
                $"{Phrases.List([.. works])}: marks are on record and none in the files. They stay and count; put the table back, or write a mark or a word for everybody.",
            Note.EnrolmentEnded(var named, var students) =>
                $"{Phrases.List([.. students.Select(student => student.Shown)])} {Counted.Noun(students.Count, "is", "are")} no longer on the list of {named}: on record, too, that is so from today on.",
            Note.WrittenOut(var tables) =>
                $"All of the record in {Counted.Of(tables, "table")}, names included: keep them as safe as the record itself.",
            Note.ReadBack(var rows) => $"{Counted.Of(rows, "row")} read; the record is as it was when it was written out.",
            Note.StillErased(var students) =>
                $"{Counted.Of(students, "student")} whom you erased {Counted.Noun(students, "is", "are")} still named in your lists or folders, and {Counted.Noun(students, "was", "were")} left out of the record.",
            Note.ErasedStudent erased => Of(erased),
            Note.BytesLeft(var student, var why) => Of(student, why),
            Note.NotOnRecord(var student) => $"The record holds nothing of {student}.",
            Note.RecordMoved(var file) => $"The record is {file} from now on. Its backups stay where they are.",
            Note.CopyMade(var file) => $"The record is whole, and so is its copy: {file}. Keep a copy on another disk as well.",
            Note.Finished(var kind) => $"An earlier run of `{kind}` was cut off while it put its files in place: they are all there now.",
            Note.KeptAside(var file, var name) => $"You had changed {file}: your version is kept as {name}.",
            Note.RosterUnderstood(var origin) => RosterWords.Of(origin),
            Note.KeyApart(var folder) => $"The key is in {folder}. Keep it apart from the reports: it says who is who.",
            _ => throw new UnreachableException($"No words for {note}."),
        };

    private static string Of(TourStep step) =>
        step switch
        {
            TourStep.Pack => "The lesson:",
            TourStep.Practice => "Practice for anyone:",
            TourStep.Deal => "The first set, dealt:",
            TourStep.Grading => "The first set, graded:",
            TourStep.SecondSet => "The second set, graded:",
            TourStep.Resit => "The second set, sat again:",
            TourStep.Measurements => "What the teams measured:",
            TourStep.Term => "The grades of the term:",
            _ => throw new UnreachableException($"No words for {step}."),
        };

    private static string Of(IReadOnlyList<Exercise> exercises) =>
        Invariant(
            $"{string.Join(", ", exercises.Select(exercise => exercise.Id))}: about {exercises.Sum(exercise => exercise.Minutes)} minutes, {exercises.Sum(SetChooser.PointsOf):0.##} points."
        );

    private static string Of(Spread spread)
    {
        var minutes =
            spread.LeastMinutes == spread.MostMinutes ? $"{spread.LeastMinutes}" : $"{spread.LeastMinutes} to {spread.MostMinutes}";
        var weight = Invariant($"each {spread.Points:0.##} points, about {minutes} minutes, and as many exercises of each skill and level");
        return spread.Different == 1
            ? $"No second set of equal weight was found, so that everyone gets the same: {weight}. Ask for fewer minutes or points, so that there is something to choose from."
            : $"{spread.Different} different sets of {Counted.Of(spread.Sets.Values.First().Count, "exercise")}, out of {spread.Exercises.Count}: {weight}.{Balance(spread)}";
    }

    private static string Balance(Spread spread) =>
        spread switch
        {
            { ExpectedApart: { } apart } =>
                $" By what earlier classes earned, no two of them are further apart than {NumberText.AtMost(apart, 1)} points.",
            { NotKnown: { Count: > 0 } few } =>
                $" They are not balanced by how hard the exercises proved: of {Counted.Of(few.Count, "exercise")} too few answers are known ({string.Join(", ", few.Take(3).Select(exercise => exercise.Id))}{(few.Count > 3 ? " …" : "")}). About 30 answers to each part are enough.",
            _ => "",
        };

    private static string Of(Note.Expected expected)
    {
        var band = Invariant(
            $"The class can be expected to earn {NumberText.AtMost(expected.Low, 1)} to {NumberText.AtMost(expected.High, 1)} of {NumberText.AtMost(expected.OutOf, 2)} points on average, {(expected.OfTheClass ? "by what it did before" : "if it is like the classes before it")}."
        );
        return expected.Unknown > 0
            ? Invariant($"{band} Of {NumberText.AtMost(expected.Unknown, 2)} points more nobody can say: they were not asked before.")
            : band;
    }

    private static string Of(Note.ErasedStudent erased)
    {
        var mentions = erased.Mentions > 0 ? $" Mentions in {Counted.Of(erased.Mentions, "entry", "entries")} of others go as well." : "";
        var backups =
            erased.Backups.Count > 0
                ? $" These copies still hold the student; delete them when you no longer need them: {string.Join(", ", erased.Backups)}."
                : "";
        return $"Of {erased.Student}, {Counted.Of(erased.Removed, "row")} with all that was dealt, typed and written about them {Counted.Noun(erased.Removed, "goes", "go")}. {Counted.Of(erased.Kept, "row")} of points and outcomes {Counted.Noun(erased.Kept, "stays", "stay")} in the class's statistics and {Counted.Noun(erased.Kept, "says", "say")} no longer whose {Counted.Noun(erased.Kept, "it was", "they were")}.{mentions}{backups}";
    }

    private static string Of(string student, StillInFile why) =>
        why switch
        {
            StillInFile.OthersRead =>
                $"Somebody else reads the record: what it said of {student} is off it, but still in its file until nobody has it open. Close the desk and other programs that have it open.",
            StillInFile.OthersWrite =>
                $"Somebody else was writing in the record: what it said of {student} is off it, but pieces may still be in its file. Wait until they are done, and erase {student} once more.",
            StillInFile.NoRoom =>
                $"There was no room on the disk to write the record anew: what it said of {student} is off it, but pieces may still be in its file. Make room for twice the record, and erase {student} once more.",
            _ => throw new UnreachableException($"No words for {why}."),
        };

    private static string Of(Note.Graded graded)
    {
        var leftovers = graded.Leftovers > 0 ? $", {graded.Leftovers} left behind by programs ignored" : "";
        return $"{graded.WithGrade} of {Counted.Of(graded.Students, "student")} graded, {graded.Missing} missing, {graded.Unreadable} unreadable; {Counted.Of(graded.OtherFiles, "other file")} accounted for{leftovers}.";
    }

    private static string Of(DueMoment due) =>
        due.Reading switch
        {
            DueReading.Plain => $"Due {due}.",
            DueReading.ZoneAssumed =>
                $"Due {due}: nobody has said in which time zone the class is, so UTC was taken. Write `time zone: Europe/Paris` or the like into the class profile.",
            DueReading.Skipped =>
                $"Due {due}: the clocks of {due.Zone} are put forward over the time that you named, so it was moved on by as much.",
            DueReading.Twice => Invariant(
                $"Due {due}, offset {due.At:zzz}: the clocks of {due.Zone} are put back over the time that you named, so it comes twice, and the later one was taken."
            ),
        };

    private static string Answers(int count) => count == 1 ? "The points of one answer" : $"The points of {count} answers";

    private static string Line(TypedPoints typed, IReadOnlyList<Exercise> exercises) =>
        $"  {GradebookWords.Of(typed, exercises)}{(typed.Fault is { } fault ? $" ({GradebookWords.Of(fault)})" : "")}";

    private static string Names(IReadOnlyList<Student> students) => string.Join(", ", students.Select(student => student.Shown));

    private static string Invariant(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
