using ClassKit.UseCases.Touring;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>The checkout that the tests run in.</summary>
internal static class Checkout
{
    public static DemoMaterial Demo { get; } = DemoMaterial.Find(AppContext.BaseDirectory) ?? throw new InvalidOperationException("The tests run inside a checkout.");

    /// <summary>A copy of the demo lesson, with the rubrics it names, to be changed.</summary>
    public static string CopyLesson(TemporaryFolder folder)
    {
        CopyFolder(Path.Combine(Demo.Root, "rubrics"), folder.Of("rubrics"));
        CopyFolder(Demo.Lesson, folder.Of("lessons", "copy"));
        return folder.Of("lessons", "copy");
    }

    private static void CopyFolder(string source, string target)
    {
        foreach (var file in Directory.EnumerateFiles(source, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(target, Path.GetRelativePath(source, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
