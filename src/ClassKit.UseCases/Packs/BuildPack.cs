using ClassKit.Content;
using ClassKit.Lessons;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Builds the pages that an instructor carries into the room.</summary>
public static class BuildPack
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "pack";

    /// <summary>Reads a lesson and a class profile and makes the pack.</summary>
    /// <param name="lessonFolder">The lesson.</param>
    /// <param name="classFile">The class profile; null for a class of usual size.</param>
    public static Produced Make(string lessonFolder, string? classFile)
    {
        var lesson = LessonReader.Read(lessonFolder);
        var profile = classFile is null ? new(UsualClass.Profile, []) : ClassProfileReader.Read(classFile);
        return lesson.Succeeded && profile.Succeeded
            ? Make(lesson.Model, profile.Model, classFile ?? lessonFolder)
            : Produced.Nothing([.. lesson.Problems, .. profile.Problems]);
    }

    /// <summary>Builds a pack from models that are at hand.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="profile">The class.</param>
    /// <param name="source">The file or folder to name if the two do not go together.</param>
    internal static Produced Make(Lesson lesson, ClassProfile profile, string source)
    {
        if (!LessonPack.Build(lesson, profile).TryGet(out var computed, out var why))
            return Produced.Nothing(new Diagnostic(source, null, why.Message.TrimEnd('.'), why.Remedy));
        var pack = PackProse.Fill(ClassPlanning.Plan(computed));
        return new(
            [
                .. HtmlPages.Pack(pack).Select(page => OutputFile.OfText(page.FileName, page.Html)),
                new("requisition.xlsx", RequisitionWriter.Write(pack)),
                new("observations.xlsx", ObservationWriter.Write(pack)),
            ],
            [$"{lesson.Title} for {profile.Name}: {profile.Students} students in {profile.Teams} teams. Open index.html.", .. pack.Cuts], []);
    }
}
