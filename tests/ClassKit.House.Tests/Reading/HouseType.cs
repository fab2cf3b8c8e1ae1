namespace ClassKit.House.Tests.Reading;

/// <summary>A type of the product, where it stands and what it names.</summary>
/// <param name="Name">With its namespace; nested types count as the type that holds them.</param>
/// <param name="Project">The project it is compiled in.</param>
/// <param name="Folder">Its file's folder, below <c>src</c>: <c>ClassKit.Grading/Judging</c>.</param>
/// <param name="Uses">The names of the product's types that it names anywhere: bases, members, bodies, attributes.</param>
/// <param name="HoldsOnlyConstants">True if the compiler puts all of its values where they are used, and its name nowhere.</param>
internal sealed record HouseType(string Name, string Project, string Folder, IReadOnlySet<string> Uses, bool HoldsOnlyConstants);
