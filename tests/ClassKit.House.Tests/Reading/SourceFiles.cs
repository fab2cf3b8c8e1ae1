using System.Text.RegularExpressions;
using Mono.Cecil;

namespace ClassKit.House.Tests.Reading;

/// <summary>Where the types of a project stand, by its debug symbols, or by their names where no code of theirs has a line.</summary>
internal sealed partial class SourceFiles
{
    private readonly string _project;
    private readonly Dictionary<string, string> _byName;

    private SourceFiles(string project, Dictionary<string, string> byName)
    {
        _project = project;
        _byName = byName;
    }

    public static SourceFiles In(ModuleDefinition module)
    {
        var project = module.Assembly.Name.Name == "classkit" ? "ClassKit.Cli" : module.Assembly.Name.Name;
        var root = Path.Combine(Repository.Root, "src", project);
        Dictionary<string, string> byName = [];
        foreach (
            var file in Directory
                .EnumerateFiles(root, "*.*", SearchOption.AllDirectories)
                .Where(file => Path.GetExtension(file) is ".cs" or ".razor")
        )
        {
            var relative = Path.GetRelativePath(root, file).Replace('\\', '/');
            if (relative.StartsWith("obj/", StringComparison.Ordinal) || relative.StartsWith("bin/", StringComparison.Ordinal))
                continue;
            var text = File.ReadAllText(file);
            var space = Namespace().Match(text).Groups["name"].Value;
            byName.TryAdd(Path.GetFileNameWithoutExtension(file), relative);
            foreach (var name in Declaration().Matches(text).Select(declared => declared.Groups["name"].Value))
            {
                byName.TryAdd(name, relative);
                byName.TryAdd($"{space}.{name}", relative);
            }
        }
        return new(project, byName);
    }

    /// <summary>A type's file, below <c>src</c>.</summary>
    public string Of(TypeReference type)
    {
        var document = type.Resolve()
            .Methods.Select(method =>
                method.DebugInformation.SequencePoints.FirstOrDefault(point => !point.IsHidden)?.Document.Url.Replace('\\', '/')
            )
            .FirstOrDefault(url =>
                url is not null
                && url.Contains($"/{_project}/", StringComparison.Ordinal)
                && !url.Contains("/obj/", StringComparison.Ordinal)
            );
        return document is not null
            ? document[(document.LastIndexOf($"/{_project}/", StringComparison.Ordinal) + 1)..]
            : $"{_project}/{_byName.GetValueOrDefault(type.FullName.Split('`')[0]) ?? _byName.GetValueOrDefault(type.Name.Split('`')[0], "")}";
    }

    [GeneratedRegex(@"\b(?:class|record|struct|enum|interface)\s+(?<name>\w+)|\bdelegate\s+[^;(]*?(?<name>\w+)\s*(?:<[^>]*>)?\(")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();
}
