using ClassKit.UseCases.Touring;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>The checkout that the tests run in.</summary>
internal static class Checkout
{
    public static DemoMaterial Demo { get; } =
        DemoMaterial.Find(AppContext.BaseDirectory) ?? throw new InvalidOperationException("The tests run inside a checkout.");

    /// <summary>A copy of the demo lesson, with the rubrics it names, to be changed.</summary>
    public static string CopyLesson(TemporaryFolder folder)
    {
        FolderContent.Copy(Path.Combine(Demo.Root, "rubrics"), folder.Of("rubrics"));
        FolderContent.Copy(Demo.Lesson, folder.Of("lessons", "copy"));
        return folder.Of("lessons", "copy");
    }
}
