using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Values;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Packs;

/// <summary>Builds what an instructor carries into the room.</summary>
public static class BuildPack
{
    /// <summary>The kind of folder that its files go into; see <see cref="PackFiles"/>.</summary>
    public const string Kind = "pack";

    /// <summary>Computes the pack and plans the class at its benches.</summary>
    /// <returns>The pack, or why the lesson and the class do not go together.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<LessonPack> Run(PackRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        if (!ComputedPack.Build(request.Lesson, request.Profile).TryGet(out var computed, out var why))
            return new(null, [new(request.Source, null, why.Message.TrimEnd('.'), why.Remedy)]);
        return new(PackProse.InWords(ClassPlanning.Plan(computed, run)), []);
    }

    /// <summary>The request for a lesson's folder and a class profile, or everything that is wrong with them.</summary>
    /// <param name="lessonFolder">The lesson.</param>
    /// <param name="classFile">The class profile; null for a class of usual size.</param>
    public static Reading<PackRequest> Read(Source lessonFolder, Source? classFile)
    {
        var lesson = LessonReader.Read(lessonFolder);
        var profile = classFile is null ? new(UsualClass.Profile, []) : ClassProfileReader.Read(classFile);
        return lesson.Succeeded && profile.Succeeded
            ? new(new(lesson.Model, profile.Model, (classFile ?? lessonFolder).Path), [])
            : new(null, [.. lesson.Problems, .. profile.Problems]);
    }
}
