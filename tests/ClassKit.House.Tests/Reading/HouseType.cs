namespace ClassKit.House.Tests.Reading;

/// <summary>A type of the product, where it stands and what it names.</summary>
/// <param name="Name">With its namespace; nested types count as the type that holds them.</param>
/// <param name="Project">The project it is compiled in.</param>
/// <param name="File">Its file, below <c>src</c>: <c>ClassKit.Grading/Judging/Credit.cs</c>.</param>
/// <param name="Uses">The names of the product's types that it names anywhere: bases, members, bodies, attributes.</param>
/// <param name="HoldsOnlyConstants">True if the compiler puts all of its values where they are used, and its name nowhere.</param>
internal sealed record HouseType(string Name, string Project, string File, IReadOnlySet<string> Uses, bool HoldsOnlyConstants)
{
    /// <summary>Its file's folder, below <c>src</c>: <c>ClassKit.Grading/Judging</c>.</summary>
    public string Folder => File[..File.LastIndexOf('/')];

    /// <summary>The namespace that it stands in.</summary>
    public string Namespace => Name[..Name.LastIndexOf('.')];

    /// <summary>The namespace that its folder asks for.</summary>
    public string NamespaceOfFolder => Folder.Replace('/', '.');

    /// <summary>True if folder and namespace say the same.</summary>
    public bool StandsWhereItSays => Namespace == NamespaceOfFolder;
}
