using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;
using ClassKit.Pages;
using ClassKit.Terms.Skills;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Skills;

/// <summary>Follows what each student can do over several graded deals, recent work counting more.</summary>
public static class FollowSkills
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "skills";

    private const string Page = "skills.html";

    /// <summary>The request for folders that grading made, or everything that is wrong with them.</summary>
    /// <param name="folders">At least one.</param>
    /// <param name="lastYear">Folders of an earlier year's class.</param>
    /// <param name="on">The day of looking; null for that of the last work.</param>
    /// <param name="test">A day on which it is wanted; null for none.</param>
    public static Reading<SkillsRequest> Read(IReadOnlyList<string> folders, IReadOnlyList<string> lastYear, DateOnly? on, DateOnly? test)
    {
        ArgumentNullException.ThrowIfNull(folders);
        ArgumentNullException.ThrowIfNull(lastYear);
        List<Diagnostic> problems = [];
        List<(ClassGrades Grades, DateOnly On)> works = [];
        foreach (var folder in folders)
        {
            var grades = GradedFolder.Read(folder, dealt: null);
            problems.AddRange(grades.Problems);
            if (!grades.Succeeded)
                continue;
            if (DayOf(grades.Model) is { } day)
                works.Add((grades.Model, day));
            else
                problems.Add(
                    new(
                        folder,
                        null,
                        "Nothing says when this work was done: it has no due moment, and no file of it says when it was saved",
                        "Grade it again and name the moment at which it was due."
                    )
                    {
                        Remedy = Remedy.NameDueMoment,
                    }
                );
        }
        List<Reading<ClassGrades>> before = [.. lastYear.Select(folder => GradedFolder.Read(folder, dealt: null))];
        problems.AddRange(before.SelectMany(grades => grades.Problems));
        return problems.Count == 0
            ? new(new(works, on ?? works.Max(work => work.On), test) { LastYear = [.. before.Select(grades => grades.Model!)] }, [])
            : new(null, problems);
    }

    /// <summary>Puts all work together.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ClassSkills Run(SkillsRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var students = request
            .Works.SelectMany(work => work.Grades.Students.Select(student => student.Who))
            .DistinctBy(student => student.Id)
            .ToList();
        var shown = request
            .Works.SelectMany(work => work.Grades.Students.SelectMany(student => Shown(student, work.On)))
            .ToLookup(one => one.Student, one => one.Shown);
        return new(
            request.Works.Select(work => work.Grades.Dealt.Cohort).FirstOrDefault(name => name.Length > 0) ?? "",
            request.On,
            request.Test,
            [
                .. run.Each(RunStep.Weighing, students)
                    .Select(student => new StudentSkills(student, SkillStanding.Of(shown[student.Id], request.On))),
            ]
        )
        {
            Paper = request.Works.Select(work => work.Grades.Dealt.Paper).LastOrDefault(paper => paper is not null),
            Years = YearBeside.Of(
                request.LastYear.SelectMany(grades => Asked(grades, request.On)),
                request.Works.SelectMany(work => Asked(work.Grades, work.On))
            ),
        };
    }

    /// <summary>The files, each made when it is written.</summary>
    public static Produced Write(ClassSkills skills)
    {
        ArgumentNullException.ThrowIfNull(skills);
        return new(
            [
                OutputFile.OfText(Page, () => HtmlPages.ClassSkills(skills)),
                .. skills.Students.Select(student =>
                    OutputFile.OfText($"students/{student.Student.Id}.html", () => HtmlPages.StudentSkills(skills, student))
                ),
            ],
            [],
            []
        )
        {
            Open = [Page],
        };
    }

    /// <summary>
    /// When it was due, on the class's clocks; otherwise the day in the middle of those on which the workbooks say that they were saved: one
    /// clock that is years ahead must not make everybody's other work old.
    /// </summary>
    private static DateOnly? DayOf(ClassGrades grades)
    {
        if (grades.Due is { } due)
            return DateOnly.FromDateTime(due.At.DateTime);
        List<DateTime> saved =
        [
            .. grades.Files.Where(file => file.Fate == FileFate.Graded).Select(file => file.Modified).OfType<DateTime>().Order(),
        ];
        return saved.Count == 0 ? null : DateOnly.FromDateTime(saved[saved.Count / 2]);
    }

    private static IEnumerable<(string Exercise, string Title, ShownSkill Shown)> Asked(ClassGrades grades, DateOnly on) =>
        grades.Students.SelectMany(student =>
            Judged(student)
                .GroupBy(answer => answer.Exercise)
                .Select(exercise => (exercise.Key.Id, exercise.Key.Title, Of(exercise.Key.Skill, on, [.. exercise])))
        );

    private static IEnumerable<(string Student, ShownSkill Shown)> Shown(StudentGrade student, DateOnly on) =>
        Judged(student).GroupBy(answer => answer.Exercise.Skill).Select(skill => (student.Who.Id, Of(skill.Key, on, [.. skill])));

    /// <summary>What nobody could judge shows nothing either way.</summary>
    private static IEnumerable<AnswerGrade> Judged(StudentGrade student) => student.Answers.Where(answer => answer.IsJudged);

    private static ShownSkill Of(string skill, DateOnly on, IReadOnlyList<AnswerGrade> answers) =>
        new(skill, on, answers.Count(answer => answer.ShowsMethod), answers.Count);
}
