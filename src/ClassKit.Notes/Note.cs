using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Plans;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Regrading;
using ClassKit.Grading.Rehearsals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.ItemBanks.Packages;

namespace ClassKit.Notes;

/// <summary>What an instructor should know of work that succeeded. Whoever takes in all of them has taken in every note there is.</summary>
public abstract record Note
{
    private Note() { }

    /// <summary>What the notes behind this one are of, where one run does the work of several.</summary>
    /// <param name="Step">The work.</param>
    public sealed record OfStep(TourStep Step) : Note;

    /// <summary>What was dealt is what the folder held already.</summary>
    /// <param name="Code">The deal's code.</param>
    public sealed record SameDeal(string Code) : Note;

    /// <summary>Students were added to a deal, of whom all others keep what they have.</summary>
    /// <param name="Code">The deal's code.</param>
    /// <param name="Students">Who was added.</param>
    public sealed record AddedToDeal(string Code, IReadOnlyList<Student> Students) : Note;

    /// <summary>Exercises were chosen for everybody.</summary>
    /// <param name="Exercises">Which.</param>
    public sealed record SetChosen(IReadOnlyList<Exercise> Exercises) : Note;

    /// <summary>Students have different sets of equal weight.</summary>
    /// <param name="Spread">The sets.</param>
    public sealed record SpreadOut(Spread Spread) : Note;

    /// <summary>What the class can be expected to earn on average with what it was dealt.</summary>
    /// <param name="Low">The lower end of a band that holds what is earned eight times in ten, in points.</param>
    /// <param name="High">Its upper end.</param>
    /// <param name="OutOf">Points of the parts that earlier classes were asked.</param>
    /// <param name="Unknown">Points of the others.</param>
    /// <param name="OfTheClass">True by what the class did before, false by what others did.</param>
    public sealed record Expected(double Low, double High, double OutOf, double Unknown, bool OfTheClass) : Note;

    /// <summary>Earlier answers were named, and none is to what was dealt.</summary>
    public sealed record NothingExpected : Note;

    /// <summary>A lesson was made one file of, with all that it leads to.</summary>
    /// <param name="Bundle">The file.</param>
    /// <param name="Taken">What is in it.</param>
    /// <param name="LeftOut">What lies beside that and is not in it.</param>
    public sealed record HandedOver(string Bundle, IReadOnlyList<string> Taken, IReadOnlyList<string> LeftOut) : Note;

    /// <summary>A lesson that was handed over was opened.</summary>
    /// <param name="Files">What came.</param>
    /// <param name="NotBrought">What stayed in the bundle.</param>
    public sealed record Received(IReadOnlyList<string> Files, IReadOnlyList<string> NotBrought) : Note;

    /// <summary>A class was dealt its workbooks.</summary>
    /// <param name="Workbooks">How many.</param>
    /// <param name="Exercises">How many exercises each has.</param>
    /// <param name="Seed">What decided the draws.</param>
    /// <param name="Record">The file that grading needs and nobody else should see.</param>
    public sealed record Dealt(int Workbooks, int Exercises, ulong Seed, string Record) : Note;

    /// <summary>The class is too large for one workbook or page to hold what is said of everybody.</summary>
    /// <param name="First">One of the files about the first students.</param>
    /// <param name="Last">The same about the last ones.</param>
    /// <param name="Parts">How many there are of each kind.</param>
    public sealed record InParts(string First, string Last, int Parts) : Note;

    /// <summary>Students share variants of an exercise.</summary>
    /// <param name="Variants">Which, and how many.</param>
    public sealed record VariantsShared(SharedVariants Variants) : Note;

    /// <summary>The marking scheme counts as many exercises as a student has, so that its rule does nothing.</summary>
    /// <param name="Best">How many it counts.</param>
    /// <param name="Exercises">How many there are.</param>
    public sealed record AllExercisesCount(int Best, int Exercises) : Note;

    /// <summary>The marking scheme counts as many points as a student can earn, so that its rule does nothing.</summary>
    /// <param name="Most">How many it counts.</param>
    /// <param name="Points">How many there are.</param>
    public sealed record AllPointsCount(int Most, decimal Points) : Note;

    /// <summary>Pages to practise with were made.</summary>
    /// <param name="Pages">How many; null for the one that is anyone's.</param>
    /// <param name="Seed">What decided the draws.</param>
    public sealed record PracticeMade(int? Pages, ulong Seed) : Note;

    /// <summary>An exercise is not practised, because it is still to be handed in.</summary>
    /// <param name="What">Which, and why.</param>
    public sealed record LeftOutOfPractice(NotPractised What) : Note;

    /// <summary>Practice after grading was made.</summary>
    /// <param name="Students">How many practise.</param>
    /// <param name="Minutes">The most time that it takes each.</param>
    /// <param name="Seed">What decided the draws.</param>
    public sealed record FollowingUp(int Students, int Minutes, ulong Seed) : Note;

    /// <summary>Students who missed nothing.</summary>
    /// <param name="Students">Who.</param>
    public sealed record NothingMissed(IReadOnlyList<Student> Students) : Note;

    /// <summary>Students of whom nothing was graded.</summary>
    /// <param name="Students">Who.</param>
    public sealed record NothingGraded(IReadOnlyList<Student> Students) : Note;

    /// <summary>Most of what came back is of another deal.</summary>
    /// <param name="Others">How many workbooks are.</param>
    /// <param name="Workbooks">Of how many.</param>
    /// <param name="Mostly">Which deal most of them are from.</param>
    /// <param name="Code">The code of this deal; null if it has none.</param>
    /// <param name="Seed">The seed of this deal.</param>
    public sealed record OtherDeals(int Others, int Workbooks, OtherDeal Mostly, string? Code, ulong Seed) : Note
    {
        /// <summary>The note for a graded class; null where most workbooks are of the deal that was graded.</summary>
        public static OtherDeals? In(ClassGrades grades)
        {
            ArgumentNullException.ThrowIfNull(grades);
            var others = grades.Files.Select(file => file.Other).OfType<OtherDeal>().ToList();
            var own = grades.Files.Count(file => file.Fate is FileFate.Graded or FileFate.OtherVersion);
            if (others.Count <= own)
                return null;
            var mostly = others.GroupBy(other => other).OrderByDescending(alike => alike.Count()).First().Key;
            return new(others.Count, others.Count + own, mostly, grades.Dealt.Identity?.Code, grades.Dealt.Seed);
        }
    }

    /// <summary>A class was graded.</summary>
    /// <param name="Students">How many students there are.</param>
    /// <param name="WithGrade">How many were graded.</param>
    /// <param name="Missing">How many handed in nothing.</param>
    /// <param name="Unreadable">Of how many nothing could be read.</param>
    /// <param name="OtherFiles">How many other files there were.</param>
    /// <param name="Leftovers">How many files programs left there.</param>
    public sealed record Graded(int Students, int WithGrade, int Missing, int Unreadable, int OtherFiles, int Leftovers) : Note;

    /// <summary>Students were graded by what they wrote on paper.</summary>
    /// <param name="Students">How many.</param>
    public sealed record OnPaper(int Students) : Note;

    /// <summary>Something typed from paper was not taken over.</summary>
    /// <param name="What">What, and why not.</param>
    public sealed record PaperFault(ClassKit.Grading.OnPaper.PaperFault What) : Note;

    /// <summary>Measurements came back.</summary>
    /// <param name="Teams">From how many teams.</param>
    public sealed record Measured(int Teams) : Note;

    /// <summary>Some of what came back could not be used.</summary>
    /// <param name="Reasons">What, and why not.</param>
    public sealed record NotMeasured(IReadOnlyList<string> Reasons) : Note;

    /// <summary>A file could not be judged, by a mistake of ours.</summary>
    /// <param name="File">Which.</param>
    /// <param name="Fault">What went wrong, for those who mend it.</param>
    public sealed record NotJudged(ReturnedName File, string Fault) : Note;

    /// <summary>Answers have the points of corrections.</summary>
    /// <param name="Answers">How many.</param>
    public sealed record Corrected(int Answers) : Note;

    /// <summary>Answers in own words wait for the instructor's points.</summary>
    /// <param name="Answers">How many.</param>
    /// <param name="Page">The page that has them side by side.</param>
    public sealed record WrittenAnswers(int Answers, string Page) : Note;

    /// <summary>What was typed into a gradebook cannot be read.</summary>
    /// <param name="Gradebook">Which, and why not.</param>
    public sealed record Unread(UnreadGradebook Gradebook) : Note;

    /// <summary>Points typed into a gradebook became corrections.</summary>
    /// <param name="Points">Which.</param>
    /// <param name="Exercises">What was dealt, in order, which says how parts are called on every page.</param>
    public sealed record TakenOver(IReadOnlyList<TypedPoints> Points, IReadOnlyList<Exercise> Exercises) : Note;

    /// <summary>Points typed into a gradebook wait to become corrections.</summary>
    /// <param name="Points">Which.</param>
    /// <param name="Exercises">What was dealt, in order, which says how parts are called on every page.</param>
    public sealed record Waiting(IReadOnlyList<TypedPoints> Points, IReadOnlyList<Exercise> Exercises) : Note;

    /// <summary>Students have something that the instructor should look at.</summary>
    /// <param name="Students">How many.</param>
    public sealed record Flagged(int Students) : Note;

    /// <summary>The part to teach again before all others.</summary>
    /// <param name="Part">Which, and how few understood it.</param>
    public sealed record TeachAgain(PartSummary Part) : Note;

    /// <summary>Earlier grades cannot be read, so that nothing is taken from them.</summary>
    /// <param name="Problems">What their reader says.</param>
    public sealed record NotGoneBy(IReadOnlyList<string> Problems) : Note;

    /// <summary>Work is due as it was said before.</summary>
    /// <param name="Due">When.</param>
    /// <param name="AsDealt">True if that was said with the deal, false if it is on record with the grades.</param>
    public sealed record DueAsBefore(DueMoment Due, bool AsDealt) : Note;

    /// <summary>Work is due as the instructor named it.</summary>
    /// <param name="Due">When, and how that was read.</param>
    public sealed record DueAsNamed(DueMoment Due) : Note;

    /// <summary>Students need not do the work, and so were dealt nothing.</summary>
    /// <param name="Students">Who.</param>
    public sealed record ExcusedFrom(IReadOnlyList<Student> Students) : Note;

    /// <summary>Exercises that a student is to leave out are none of the deal.</summary>
    /// <param name="Student">Who.</param>
    /// <param name="Ids">The exercises as they were written down.</param>
    public sealed record LeavesOutNothing(Student Student, IReadOnlyList<string> Ids) : Note;

    /// <summary>Work is sat again with other numbers.</summary>
    /// <param name="Replaced">The code of the deal that it is sat again for.</param>
    /// <param name="Students">How many sit again.</param>
    public sealed record Resit(string Replaced, int Students) : Note;

    /// <summary>Something was arranged with students.</summary>
    /// <param name="Students">With whom; each has large print, more time or a due moment of their own.</param>
    public sealed record Arranged(IReadOnlyList<DealtStudent> Students) : Note;

    /// <summary>Work is due at another time than on record.</summary>
    /// <param name="Before">When it was due.</param>
    /// <param name="Now">When it is due; null if it may come at any time.</param>
    /// <param name="AsDealt">True if that was said with the deal, false if it is on record with the grades.</param>
    public sealed record DueChanged(DueMoment Before, DueMoment? Now, bool AsDealt) : Note;

    /// <summary>The grades on record do not say how they were judged.</summary>
    public sealed record JudgingNotKnown : Note;

    /// <summary>The grades on record were judged by another version of the judge.</summary>
    /// <param name="Before">Which.</param>
    /// <param name="Now">This one.</param>
    public sealed record OtherJudge(int Before, int Now) : Note;

    /// <summary>The fresh inputs on record do not fit an exercise any more.</summary>
    /// <param name="Exercise">Which.</param>
    public sealed record OtherInputs(Exercise Exercise) : Note;

    /// <summary>How many students' grades change.</summary>
    /// <param name="Students">How many.</param>
    public sealed record Changes(int Students) : Note;

    /// <summary>A student's grade changes.</summary>
    /// <param name="Change">How, and why.</param>
    public sealed record Changed(GradeChange Change) : Note;

    /// <summary>A pack was built.</summary>
    /// <param name="Lesson">The lesson's title.</param>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Students">How many students it has.</param>
    /// <param name="Teams">In how many teams.</param>
    /// <param name="First">The page to open first.</param>
    public sealed record Packed(string Lesson, string Class, int Students, int Teams, string First) : Note;

    /// <summary>Not all of a lesson fits its period.</summary>
    /// <param name="What">What was cut of it.</param>
    public sealed record Cut(PeriodCut What) : Note;

    /// <summary>A pack has no bench plan: the lesson does not fit, and nothing that can be moved or left out makes it.</summary>
    /// <param name="Planning">What stands in the way, and what would help.</param>
    /// <param name="Bench">The class that was to be planned.</param>
    public sealed record NoPlan(BenchPlanning Planning, BenchClass Bench) : Note;

    /// <summary>A plan does not treat all alike that is held against each other.</summary>
    /// <param name="Differences">In what; one or more.</param>
    /// <param name="Bench">The class that was planned.</param>
    public sealed record Unlike(IReadOnlyList<SeriesDifference> Differences, BenchClass Bench) : Note;

    /// <summary>An invented class took the exercises.</summary>
    /// <param name="Students">How many students were invented.</param>
    /// <param name="Report">How the grader and the exercises fared.</param>
    public sealed record Rehearsed(int Students, RehearsalReport Report) : Note;

    /// <summary>An exercise has misconceptions that a class met, and was proved with them.</summary>
    /// <param name="File">The exercise's file.</param>
    /// <param name="Misconceptions">They.</param>
    /// <param name="Before">How many draws could be dealt before.</param>
    /// <param name="After">How many can be dealt now.</param>
    /// <param name="Draws">Of how many.</param>
    public sealed record Learned(string File, IReadOnlyList<Misconception> Misconceptions, int Before, int After, int Draws) : Note;

    /// <summary>Grades were put into tables for a school's records.</summary>
    /// <param name="Results">How many.</param>
    public sealed record Tabulated(int Results) : Note;

    /// <summary>A bank of items was made.</summary>
    /// <param name="Items">How many items.</param>
    /// <param name="Exercises">Of how many exercises.</param>
    /// <param name="Package">The file.</param>
    public sealed record Banked(int Items, int Exercises, string Package) : Note;

    /// <summary>Something about a bank of items.</summary>
    /// <param name="Bank">What.</param>
    public sealed record OfBank(BankNote Bank) : Note;

    /// <summary>Answers of a work wait for the instructor's decision.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Answers">How many.</param>
    /// <param name="Corrections">The table in which to decide them.</param>
    public sealed record Undecided(string Work, int Answers, string Corrections) : Note;

    /// <summary>Two have marked a work.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Page">The page that compares them.</param>
    public sealed record MarkedTwice(string Work, string Page) : Note;

    /// <summary>Marks of a work at the bench are not complete for some students, so that they have none of it.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Students">Whose.</param>
    public sealed record NotMarkedThrough(string Work, IReadOnlyList<Student> Students) : Note;

    /// <summary>Students have a mark of a work and are excused from it: the excuse counts, and the mark does not.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Students">Who; at least one.</param>
    public sealed record MarkedAndExcused(string Work, IReadOnlyList<Student> Students) : Note;

    /// <summary>Students have grades of a work and are no longer on the class list.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Students">Who; at least one.</param>
    public sealed record LeftTheClass(string Work, IReadOnlyList<Student> Students) : Note;

    /// <summary>Workbooks came back with nothing in them.</summary>
    /// <param name="Students">Whose; at least one.</param>
    /// <param name="Corrections">The table that says whether they are handed in.</param>
    public sealed record CameBackEmpty(IReadOnlyList<Student> Students, string Corrections) : Note;

    /// <summary>Students have no mark of a work yet, for their workbooks came back empty and nobody has said that they are handed in.</summary>
    /// <param name="Work">The work's title.</param>
    /// <param name="Students">Who; at least one.</param>
    public sealed record EmptyLeftOut(string Work, IReadOnlyList<Student> Students) : Note;

    /// <summary>The marks of a term were weighed.</summary>
    /// <param name="WithGrade">How many students have a grade.</param>
    /// <param name="Students">Of how many.</param>
    public sealed record Weighed(int WithGrade, int Students) : Note;

    /// <summary>Grades of a term may still change.</summary>
    /// <param name="Students">How many.</param>
    public sealed record Provisional(int Students) : Note;

    /// <summary>Something that must be passed holds grades of a term back.</summary>
    /// <param name="Students">How many.</param>
    public sealed record HeldBack(int Students) : Note;

    /// <summary>Grades went on record.</summary>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Students">How many students they are of.</param>
    /// <param name="Deal">The deal's code.</param>
    /// <param name="Number">1 for the first grading of the deal, 2 for the one that stands over it, and so on.</param>
    public sealed record Entered(string Class, int Students, string Deal, int Number) : Note;

    /// <summary>Just these grades were on record already.</summary>
    /// <param name="Deal">The deal's code.</param>
    public sealed record EnteredBefore(string Deal) : Note;

    /// <summary>A lesson that was given went on record.</summary>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Lesson">The lesson's title.</param>
    /// <param name="Day">When it was given.</param>
    public sealed record LessonEntered(string Class, string Lesson, DateOnly Day) : Note;

    /// <summary>What a class measured is on record.</summary>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Lesson">The lesson's title.</param>
    /// <param name="Day">When it was given.</param>
    /// <param name="Values">How many measurements came back.</param>
    public sealed record MeasurementsEntered(string Class, string Lesson, DateOnly Day, int Values) : Note;

    /// <summary>Works are in none of the tables for other programs, since nobody knows their points.</summary>
    /// <param name="Works">Their titles; at least one.</param>
    public sealed record UngradedLeftOut(IReadOnlyList<string> Works) : Note;

    /// <summary>Grades of a term are frozen as given out, or would be.</summary>
    /// <param name="Term">What the term is called.</param>
    /// <param name="Students">How many students they are of.</param>
    /// <param name="Number">1 for the first time, 2 for a change, and so on; null where nothing changes.</param>
    /// <param name="Differences">Who changes, and by which work.</param>
    public sealed record Frozen(string Term, int Students, int? Number, IReadOnlyList<FrozenChange> Differences) : Note
    {
        /// <summary>How many of these grades may still change, since something of theirs has no mark yet or was not decided on.</summary>
        public int Open { get; init; }

        /// <summary>True where it was only asked what freezing would come to, and nothing was written.</summary>
        public bool IsAsked { get; init; }
    }

    /// <summary>A term went on record.</summary>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Title">What the term is called.</param>
    /// <param name="Works">How many works it has.</param>
    /// <param name="Marks">How many marks from the bench and from the table of marks.</param>
    public sealed record TermEntered(string Class, string Title, int Works, int Marks) : Note;

    /// <summary>Marks went off the record, since the files of their term have them no longer.</summary>
    /// <param name="Marks">How many; at least 1.</param>
    public sealed record MarksTakenOff(int Marks) : Note;

    /// <summary>Works have marks on record and none in the files; they stay.</summary>
    /// <param name="Works">The titles of these works.</param>
    public sealed record MarksWithoutFile(IReadOnlyList<string> Works) : Note;

    /// <summary>Students were in the class by the record and are on its list no more.</summary>
    /// <param name="Class">What the class is called.</param>
    /// <param name="Students">Who.</param>
    public sealed record EnrolmentEnded(string Class, IReadOnlyList<Student> Students) : Note;

    /// <summary>The record was written out as tables.</summary>
    /// <param name="Tables">How many.</param>
    public sealed record WrittenOut(int Tables) : Note;

    /// <summary>A record was filled from tables.</summary>
    /// <param name="Rows">How many rows were read.</param>
    public sealed record ReadBack(int Rows) : Note;

    /// <summary>Students were left out who were erased from the record, and whom lists or folders still name.</summary>
    /// <param name="Students">How many.</param>
    public sealed record StillErased(int Students) : Note;

    /// <summary>A student was erased from the record, or would be.</summary>
    /// <param name="Student">The student's id.</param>
    /// <param name="Removed">How many rows go.</param>
    /// <param name="Kept">How many rows stay as part of the class's statistics, without the student.</param>
    /// <param name="Mentions">How many entries of others lose a mention of the student.</param>
    /// <param name="Backups">Copies that still hold the student.</param>
    public sealed record ErasedStudent(string Student, int Removed, int Kept, int Mentions, IReadOnlyList<string> Backups) : Note;

    /// <summary>A student is off the record, and bytes of them are still in its file.</summary>
    /// <param name="Student">The student's id.</param>
    /// <param name="Why">Why.</param>
    public sealed record BytesLeft(string Student, StillInFile Why) : Note;

    /// <summary>The record holds nothing of a student whose files are meant.</summary>
    /// <param name="Student">The student's id.</param>
    public sealed record NotOnRecord(string Student) : Note;

    /// <summary>Files of the teaching folder that name a student who was erased, or would be.</summary>
    /// <param name="Traces">What becomes of each.</param>
    /// <param name="Fate">Whether that was done.</param>
    public sealed record StillNamed(IReadOnlyList<StudentTrace> Traces, TraceFate Fate) : Note;

    /// <summary>The record is kept elsewhere now.</summary>
    /// <param name="File">Where.</param>
    public sealed record RecordMoved(string File) : Note;

    /// <summary>The record was copied.</summary>
    /// <param name="File">The copy.</param>
    public sealed record CopyMade(string File) : Note;

    /// <summary>An earlier run was cut off while it put its files in place, and they are all there now.</summary>
    /// <param name="Kind">What kind of run.</param>
    public sealed record Finished(string Kind) : Note;

    /// <summary>A roster was not laid out in the plainest way.</summary>
    /// <param name="Origin">What was taken for what.</param>
    public sealed record RosterUnderstood(RosterOrigin Origin) : Note;

    /// <summary>A file of ours that the instructor had changed was kept.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Name">Under which name it is kept.</param>
    public sealed record KeptAside(string File, string Name) : Note;

    /// <summary>The key that says who is who lies apart from reports without names.</summary>
    /// <param name="Folder">Where.</param>
    public sealed record KeyApart(string Folder) : Note;
}
