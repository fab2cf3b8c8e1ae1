using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Dealing;

/// <summary>Reads JSON that came from a disk, within limits that no file of ours comes near.</summary>
internal static class UntrustedJson
{
    /// <summary>A class of 10,000 has less.</summary>
    private const long MostBytes = 512L * 1024 * 1024;

    private const int MostLetters = 100_000;

    private const int MostDepth = 24;

    private const int MostQuoted = 500;

    private const double GreatestNumber = 1e15;

    /// <summary>Reads a file, or says why it cannot be read.</summary>
    /// <param name="path">The file.</param>
    /// <param name="remedy">What to do about it.</param>
    /// <param name="shape">The document's.</param>
    /// <param name="typed">True where what students typed stands in it: any number that a cell can hold, any character.</param>
    /// <param name="model">Makes a model of what was read; may throw <see cref="FormatException"/> with the reason why it makes none.</param>
    public static Reading<TModel> ReadFile<TDocument, TModel>(string path, string remedy, IJsonTypeInfoResolver shape, bool typed, Func<TDocument, Reading<TModel>> model)
        where TDocument : class
        where TModel : class
    {
        try
        {
            return new FileInfo(path).Length > MostBytes
                ? new(null, [new(path, null, $"It is larger than {MostBytes / (1024 * 1024)} MiB", remedy)])
                : Read(path, File.ReadAllText(path), remedy, shape, typed, model);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(null, [new(path, null, $"It cannot be read: {failure.Message}", "Check that you may read it.")]);
        }
    }

    /// <summary>Reads a text.</summary>
    public static Reading<TModel> Read<TDocument, TModel>(string file, string text, string remedy, IJsonTypeInfoResolver shape, bool typed, Func<TDocument, Reading<TModel>> model)
        where TDocument : class
        where TModel : class
    {
        try
        {
            Check(Encoding.UTF8.GetBytes(text), typed);
            return JsonSerializer.Deserialize<TDocument>(text, Strict(shape)) is { } document ? Short(model(document)) : new(null, [new(file, 1, "There is nothing in it", remedy)]);
        }
        catch (JsonException failure)
        {
            return new(null, [new(file, (int?)failure.LineNumber + 1, $"It cannot be read at {failure.Path ?? "this place"}: {failure.Message.Split(" Path:", 2)[0].TrimEnd('.')}", remedy)]);
        }
        catch (FormatException failure)
        {
            return Short<TModel>(new(null, [new(file, null, failure.Message, remedy)]));
        }
    }

    private static JsonSerializerOptions Strict(IJsonTypeInfoResolver shape) => new(JsonStyle.For(shape)) { AllowDuplicateProperties = false, MaxDepth = MostDepth };

    /// <summary>What was found, cut where it quotes more than anybody reads.</summary>
    private static Reading<TModel> Short<TModel>(Reading<TModel> reading)
        where TModel : class =>
        reading.Succeeded ? reading : new(null, [.. reading.Problems.Select(problem => problem.Found.Length > MostQuoted ? problem with { Found = problem.Found[..MostQuoted] + "…" } : problem)]);

    /// <summary>What the types of a document do not say: no gaps in lists, no name twice in an object, no endless text, no number beyond reason.</summary>
    private static void Check(byte[] json, bool typed)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = MostDepth });
        // The names in every open object; null for a list.
        var open = new Stack<HashSet<string>?>();
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.StartArray or JsonTokenType.StartObject:
                    open.Push(reader.TokenType == JsonTokenType.StartArray ? null : new(StringComparer.OrdinalIgnoreCase));
                    break;
                case JsonTokenType.EndArray or JsonTokenType.EndObject:
                    open.Pop();
                    break;
                case JsonTokenType.Null when open.TryPeek(out var names) && names is null:
                    throw At(json, reader.TokenStartIndex, "null stands in a list");
                case JsonTokenType.Number when !reader.TryGetDouble(out var number) || !double.IsFinite(number) || (!typed && Math.Abs(number) > GreatestNumber && !reader.TryGetUInt64(out _)):
                    throw At(json, reader.TokenStartIndex, "a number is beyond reason");
                case JsonTokenType.String or JsonTokenType.PropertyName when reader.ValueSpan.Length > MostLetters:
                    throw At(json, reader.TokenStartIndex, $"a text is longer than {MostLetters} bytes");
                case JsonTokenType.String when !IsText(ref reader, typed):
                    throw At(json, reader.TokenStartIndex, "a text holds characters that are none");
                case JsonTokenType.PropertyName when !IsText(ref reader, typed):
                    throw At(json, reader.TokenStartIndex, "a name holds characters that are none");
                case JsonTokenType.PropertyName when reader.GetString() is { } name && !open.Peek()!.Add(name):
                    throw At(json, reader.TokenStartIndex, "a name stands twice in one object");
            }
        }
    }

    private static bool IsText(ref Utf8JsonReader reader, bool typed)
    {
        try
        {
            return reader.GetString() is { } text && (typed || !text.Any(letter => letter is < ' ' and not '\n' and not '\t' and not '\r' or '\uFFFE' or '\uFFFF'));
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    private static JsonException At(byte[] json, long place, string what) => new(what, null, json.AsSpan(0, (int)place).Count((byte)'\n'), null);
}
