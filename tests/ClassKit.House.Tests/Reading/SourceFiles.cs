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

    public static SourceFiles Of(ModuleDefinition module)
    {
        var project = module.Assembly.Name.Name == "classkit" ? "ClassKit.Cli" : module.Assembly.Name.Name;
        var root = Path.Combine(Repository.Root, "src", project);
        Dictionary<string, string> byName = [];
        foreach (var file in Directory.EnumerateFiles(root, "*.*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".cs" or ".razor"))
        {
            var relative = Path.GetRelativePath(root, file).Replace('\\', '/');
            if (relative.StartsWith("obj/", StringComparison.Ordinal) || relative.StartsWith("bin/", StringComparison.Ordinal)) continue;
            byName.TryAdd(Path.GetFileNameWithoutExtension(file), relative);
            foreach (Match declared in Declaration().Matches(File.ReadAllText(file))) byName.TryAdd(declared.Groups["name"].Value, relative);
        }
        return new(project, byName);
    }

    public string FolderOf(TypeReference type)
    {
        var document = type.Resolve().Methods
            .Select(method => method.DebugInformation.SequencePoints.FirstOrDefault(point => !point.IsHidden)?.Document.Url.Replace('\\', '/'))
            .FirstOrDefault(url => url is not null && url.Contains($"/{_project}/", StringComparison.Ordinal) && !url.Contains("/obj/", StringComparison.Ordinal));
        var file = document is not null
            ? document[(document.LastIndexOf($"/{_project}/", StringComparison.Ordinal) + _project.Length + 2)..]
            : _byName.GetValueOrDefault(type.Name.Split('`')[0], "");
        var folder = file.LastIndexOf('/') is var slash and >= 0 ? file[..slash] : "";
        return folder.Length == 0 ? _project : $"{_project}/{folder}";
    }

    [GeneratedRegex(@"\b(?:class|record|struct|enum|interface)\s+(?<name>\w+)|\bdelegate\s+[^;(]*?(?<name>\w+)\s*(?:<[^>]*>)?\(")]
    private static partial Regex Declaration();
}
