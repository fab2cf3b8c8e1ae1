using ClassKit.Content.FrontMatter;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Classes;

/// <summary>The class list that a class profile names.</summary>
public static class NamedRoster
{
    /// <summary>The list; null where the profile names none, or cannot be read, which its own reader says.</summary>
    public static Source? Of(Source classFile)
    {
        ArgumentNullException.ThrowIfNull(classFile);
        var problems = OwnIngredients.ProblemsOf(classFile);
        return
            SourceFile.Read(classFile, problems) is { } text
            && FrontMatterBlock.Split(text, problems) is { } block
            && FrontMatterReader.Read(block.Yaml, problems).Optional("roster") is { } path
            ? classFile.At(ContentPath.Beside(problems.File, path.Text))
            : null;
    }
}
