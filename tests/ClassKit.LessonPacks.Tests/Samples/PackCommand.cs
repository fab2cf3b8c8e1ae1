using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.LessonPacks.Tests.Samples;

/// <summary>From a lesson's folder to the files of its pack, as a front does it.</summary>
internal static class PackCommand
{
    public static Produced Make(string lesson, string? profile) =>
        Produced.Of(BuildPack.Read(lesson, profile), request => BuildPack.Run(request, Run.Unwatched), PackFiles.Write);
}
