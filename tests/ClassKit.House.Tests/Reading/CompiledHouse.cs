using Mono.Cecil;

namespace ClassKit.House.Tests.Reading;

/// <summary>The product as it is compiled: every type of every project under <c>src</c>, with its folder from the debug symbols.</summary>
internal static class CompiledHouse
{
    private static readonly Lazy<IReadOnlyList<HouseType>> Read = new(ReadAll);

    public static IReadOnlyList<HouseType> Types => Read.Value;

    public static IReadOnlyList<string> Projects { get; } =
    [
        .. Directory
            .EnumerateFiles(AppContext.BaseDirectory, "*.dll")
            .Select(Path.GetFileNameWithoutExtension)
            .OfType<string>()
            .Where(IsOurs)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The projects that a project was compiled against.</summary>
    public static IReadOnlyList<string> References(string project)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(FileOf(project));
        return [.. assembly.MainModule.AssemblyReferences.Select(reference => reference.Name).Where(IsOurs).Order(StringComparer.Ordinal)];
    }

    /// <summary>Every text that a project's code holds.</summary>
    public static IReadOnlyList<string> Texts(string project)
    {
        using var assembly = AssemblyDefinition.ReadAssembly(FileOf(project));
        return
        [
            .. assembly
                .MainModule.GetTypes()
                .SelectMany(type => type.Methods)
                .Where(method => method.HasBody)
                .SelectMany(method => method.Body.Instructions)
                .Select(instruction => instruction.Operand)
                .OfType<string>(),
        ];
    }

    private static bool IsOurs(string project) =>
        project == "classkit"
        || (project.StartsWith("ClassKit.", StringComparison.Ordinal) && !project.EndsWith(".Tests", StringComparison.Ordinal));

    private static string FileOf(string project) => Path.Combine(AppContext.BaseDirectory, project + ".dll");

    private static IReadOnlyList<HouseType> ReadAll()
    {
        Dictionary<string, (string Project, string File, HashSet<string> Uses, bool OnlyConstants)> found = [];
        foreach (var project in Projects)
        {
            using var assembly = AssemblyDefinition.ReadAssembly(FileOf(project), new ReaderParameters { ReadSymbols = true });
            var files = SourceFiles.In(assembly.MainModule);
            foreach (var type in assembly.MainModule.GetTypes().Where(type => !IsCompilers(type)))
            {
                var name = Outermost(type).FullName;
                if (!found.TryGetValue(name, out var entry))
                    found[name] = entry = (
                        project,
                        files.Of(Outermost(type)),
                        [],
                        type.HasFields && type.Fields.All(field => field.IsLiteral) && !type.HasMethods
                    );
                entry.Uses.UnionWith(TypeUses.Of(type).Where(used => used != name));
            }
        }
        return
        [
            .. found.Select(entry => new HouseType(
                entry.Key,
                entry.Value.Project,
                entry.Value.File,
                entry.Value.Uses.Where(found.ContainsKey).ToHashSet(StringComparer.Ordinal),
                entry.Value.OnlyConstants
            )),
        ];
    }

    /// <summary>
    /// What compilers make by themselves at the top level belongs to nobody: helpers for arrays, embedded attributes, the imports of Razor.
    /// </summary>
    private static bool IsCompilers(TypeDefinition type) =>
        Outermost(type) is { } outer
        && (outer.Name.StartsWith('<') || outer.Name == "_Imports" || !outer.Namespace.StartsWith("ClassKit", StringComparison.Ordinal));

    internal static TypeReference Outermost(TypeReference type) => type.DeclaringType is { } holder ? Outermost(holder) : type;
}
