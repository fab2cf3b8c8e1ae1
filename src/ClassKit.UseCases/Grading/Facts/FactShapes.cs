using System.Text.Json.Nodes;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>
/// How a closed set of facts stands in grades.json: each fact an object with the word of its kind and the kind's own fields.
/// </summary>
internal sealed class FactShapes<TFact>(params IReadOnlyList<FactShape<TFact>> shapes)
    where TFact : class
{
    private const string Kind = "kind";

    private readonly Dictionary<Type, FactShape<TFact>> _byType = shapes.ToDictionary(shape => shape.Type);
    private readonly Dictionary<string, FactShape<TFact>> _byWord = shapes.ToDictionary(shape => shape.Word);

    /// <summary>What the kinds are called, in the order of the table.</summary>
    public IReadOnlyList<string> Words { get; } = [.. shapes.Select(shape => shape.Word)];

    /// <summary>The fact as it stands in the file.</summary>
    public JsonObject Entry(TFact fact)
    {
        var shape = _byType[fact.GetType()];
        var entry = new JsonObject { [Kind] = shape.Word };
        shape.Write(fact, entry);
        return entry;
    }

    /// <summary>The fact that stands in the file; null for one of a kind that only later versions know.</summary>
    /// <exception cref="FormatException">It lacks something, or names what is not on record.</exception>
    public TFact? Model(JsonObject entry, RecordNames names) => Model(new FactReader(entry, names));

    /// <summary>The fact within another.</summary>
    public TFact? Model(FactReader entry) => _byWord.TryGetValue(entry.Text(Kind), out var shape) ? shape.Read(entry) : null;
}
