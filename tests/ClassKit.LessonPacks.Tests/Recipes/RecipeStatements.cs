using System.Text.Json;

namespace ClassKit.LessonPacks.Tests.Recipes;

/// <summary>
/// What PyLD, a processor of JSON-LD 1.1, understands of a recipe: statements of who has which property with which value, in no order. It
/// reaches no network: in place of schema.org's context it is given the line of that document that matters here. In its release 15 the
/// vocabulary is http://schema.org/, and none of the properties of our recipes is given another kind of value than text.
/// </summary>
internal sealed class RecipeStatements
{
    public const string Vocabulary = "http://schema.org/";

    private const string Reading = """
        import json, sys
        from pyld import jsonld
        def load(url, options):
            if url.rstrip('/') not in ('https://schema.org', 'http://schema.org'): raise Exception('asked for ' + url)
            return {'contentType': 'application/ld+json', 'contextUrl': None, 'documentUrl': url, 'document': {'@context': {'@vocab': 'http://schema.org/'}}}
        jsonld.set_document_loader(load)
        recipes = json.load(open(sys.argv[1], encoding='utf-8'))
        print(json.dumps([[[s['subject']['value'], s['predicate']['value'], s['object']['value']] for s in jsonld.to_rdf(recipe).get('@default', [])] for recipe in recipes]))
        """;

    private readonly ILookup<(string Of, string Property), string> _values;

    private RecipeStatements(string[][] statements)
    {
        Properties = [.. statements.Select(statement => statement[1]).Distinct()];
        _values = statements.ToLookup(statement => (statement[0], statement[1]), statement => statement[2]);
        Recipe = statements.Single(statement => statement[2] == Vocabulary + "Recipe")[0];
    }

    /// <summary>The node that is the recipe.</summary>
    public string Recipe { get; }

    /// <summary>Every property that something is said with, with its whole name.</summary>
    public IReadOnlyList<string> Properties { get; }

    /// <summary>The values of a property of a node, in no order.</summary>
    public IEnumerable<string> Of(string node, string property) => _values[(node, Vocabulary + property)];

    /// <summary>Reads recipes, each a text of JSON-LD.</summary>
    public static IReadOnlyList<RecipeStatements> Read(IEnumerable<string> recipes)
    {
        Tool.PythonWithPyLd.Require();
        var folder = Directory.CreateTempSubdirectory("classkit-");
        try
        {
            var file = Path.Combine(folder.FullName, "recipes.json");
            File.WriteAllText(file, $"[{string.Join(",", recipes)}]");
            return
            [
                .. JsonSerializer
                    .Deserialize<string[][][]>(Tool.PythonWithPyLd.Run("-c", Reading, file))!
                    .Select(statements => new RecipeStatements(statements)),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
