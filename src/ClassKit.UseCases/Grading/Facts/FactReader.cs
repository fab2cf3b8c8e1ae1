using System.Text.Json;
using System.Text.Json.Nodes;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>
/// Reads the fields of a fact. A field that is missing or of another kind is a <see cref="FormatException"/> that names it.
/// </summary>
/// <param name="entry">The fact as it stands in the file.</param>
/// <param name="names">Whom and what it may name.</param>
internal sealed class FactReader(JsonObject entry, RecordNames names)
{
    public RecordNames Names => names;

    public string Text(string field) => Value<string>(field, "a text");

    /// <summary>A formula with its <c>=</c>.</summary>
    public string Formula(string field) => CellFormula.Of(Text(field)).Text;

    /// <summary>A part of a formula, without <c>=</c>.</summary>
    public string Expression(string field) => CellFormula.Of("=" + Text(field)).Text[1..];

    /// <summary>Texts by what they are called.</summary>
    public IReadOnlyDictionary<string, string> ByName(string field) =>
        entry[field] is JsonObject texts
            ? texts.ToDictionary(
                text => text.Key,
                text =>
                    text.Value is JsonValue value && value.TryGetValue<string>(out var found) ? found : throw Wrong(field, "texts by name")
            )
            : throw Wrong(field, "an object");

    public bool Has(string field) => entry[field] is not null;

    public string? TextOrNull(string field) => entry[field] is null ? null : Text(field);

    public bool Bool(string field) => Value<bool>(field, "true or false");

    public int Int(string field) => Value<int>(field, "a whole number");

    public int? IntOrNull(string field) => entry[field] is null ? null : Int(field);

    public long Long(string field) => Value<long>(field, "a whole number");

    public double Number(string field) => Value<double>(field, "a number");

    public decimal Decimal(string field) => Value<decimal>(field, "a number");

    public DateTime Moment(string field) => Value<DateTime>(field, "a moment (ISO 8601)");

    public Student Student(string field) => names.Student(Text(field));

    public Part Part(string field) => names.Part(Text(field));

    public ReturnedName File(string field) => new(Text(field));

    public Quotation Quote(string field) => new(Text(field));

    public Quotation? QuoteOrNull(string field) => TextOrNull(field) is { } text ? new(text) : null;

    public T Word<T>(string field)
        where T : struct, Enum => KindWords.Find<T>(Text(field));

    public IReadOnlyList<string> Texts(string field) =>
        [
            .. List(field)
                .Select(item =>
                    item is JsonValue value && value.TryGetValue<string>(out var text) ? text : throw Wrong(field, "a list of texts")
                ),
        ];

    public IReadOnlyList<Student> Students(string field) => [.. Texts(field).Select(names.Student)];

    public IReadOnlyList<Part> Parts(string field) => [.. Texts(field).Select(names.Part)];

    public IReadOnlyList<ReturnedName> Files(string field) => [.. Texts(field).Select(path => new ReturnedName(path))];

    /// <summary>Parts of any exercises, each as both ids with a point between them.</summary>
    public IReadOnlyList<(string Exercise, string Part)> Asked(string field) =>
        [
            .. Texts(field)
                .Select(asked =>
                    asked.Split('.') is [var exercise, var part]
                        ? (exercise, part)
                        : throw Wrong(field, "a list of parts such as “scaling.flour”")
                ),
        ];

    public FactReader Within(string field) => entry[field] is JsonObject inner ? new(inner, names) : throw Wrong(field, "an object");

    public IReadOnlyList<FactReader> Each(string field) =>
        [.. List(field).Select(item => item is JsonObject inner ? new FactReader(inner, names) : throw Wrong(field, "a list of objects"))];

    /// <summary>A fact of another closed set.</summary>
    public T Fact<T>(string field, FactShapes<T> shapes)
        where T : class => shapes.Model(Within(field)) ?? throw Wrong(field, "a fact of a kind that this version knows");

    public SyntaxFound Found(string field)
    {
        var found = Within(field);
        return new(found.Word<SyntaxFoundKind>("what"), found.Text("text"));
    }

    /// <summary>The cell that this object names.</summary>
    public CellAddress Cell() =>
        CellAddress.TryParse(Text("sheet"), Text("cell"), out var cell) ? cell : throw Wrong("cell", "a cell such as C9");

    public CellPlace Place(string field)
    {
        var place = Within(field);
        return new(place.Cell(), place.Bool("ownSheet"));
    }

    private JsonArray List(string field) => entry[field] as JsonArray ?? throw Wrong(field, "a list");

    private T Value<T>(string field, string expected)
    {
        try
        {
            return entry[field] is JsonValue value && value.TryGetValue<T>(out var found) && found is not null
                ? found
                : throw Wrong(field, expected);
        }
        catch (Exception strange) when (strange is InvalidOperationException or JsonException)
        {
            throw Wrong(field, expected);
        }
    }

    private static FormatException Wrong(string field, string expected) =>
        new($"“{field}” of a fact is not what it should be; expected {expected}");
}
