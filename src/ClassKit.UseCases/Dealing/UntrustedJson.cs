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

    private const int MostDepth = 24;

    private const int MostQuoted = 500;

    /// <summary>Reads a file, or says why it cannot be read.</summary>
    /// <param name="path">The file.</param>
    /// <param name="remedy">What to do about it.</param>
    /// <param name="shape">The document's.</param>
    /// <param name="typed">True where what students typed stands in it: any number that a cell can hold, any character.</param>
    /// <param name="model">Makes a model of what was read; may throw <see cref="FormatException"/> with the reason why it makes
    /// none.</param>
    public static Reading<TModel> ReadFile<TDocument, TModel>(
        string path,
        string remedy,
        IJsonTypeInfoResolver shape,
        bool typed,
        Func<TDocument, Reading<TModel>> model
    )
        where TDocument : class
        where TModel : class
    {
        try
        {
            using var file = File.OpenRead(path);
            return file.Length > MostBytes
                ? new(null, [new(path, null, $"It is larger than {MostBytes / (1024 * 1024)} MiB", remedy)])
                : Read(path, file, remedy, shape, typed, model);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(null, [new(path, null, $"It cannot be read: {failure.Message}", "Check that you may read it.")]);
        }
    }

    /// <summary>Reads a text.</summary>
    public static Reading<TModel> Read<TDocument, TModel>(
        string file,
        string text,
        string remedy,
        IJsonTypeInfoResolver shape,
        bool typed,
        Func<TDocument, Reading<TModel>> model
    )
        where TDocument : class
        where TModel : class => Read(file, new MemoryStream(Encoding.UTF8.GetBytes(text)), remedy, shape, typed, model);

    /// <summary>
    /// Reads what can be read twice: it is held against the limits before anything is made of it, and never whole in memory.
    /// </summary>
    private static Reading<TModel> Read<TDocument, TModel>(
        string file,
        Stream content,
        string remedy,
        IJsonTypeInfoResolver shape,
        bool typed,
        Func<TDocument, Reading<TModel>> model
    )
        where TDocument : class
        where TModel : class
    {
        try
        {
            JsonLimits.Check(content, typed, MostDepth);
            content.Position = 0;
            return JsonSerializer.Deserialize<TDocument>(content, Strict(shape)) is { } document
                ? Short(model(document))
                : new(null, [new(file, 1, "There is nothing in it", remedy)]);
        }
        catch (JsonException failure)
        {
            return new(
                null,
                [
                    new(
                        file,
                        (int?)failure.LineNumber + 1,
                        $"It cannot be read at {failure.Path ?? "this place"}: {failure.Message.Split(" Path:", 2)[0].TrimEnd('.')}",
                        remedy
                    ),
                ]
            );
        }
        catch (FormatException failure)
        {
            return Short<TModel>(new(null, [new(file, null, failure.Message, remedy)]));
        }
    }

    private static JsonSerializerOptions Strict(IJsonTypeInfoResolver shape) =>
        new(JsonStyle.For(shape)) { AllowDuplicateProperties = false, MaxDepth = MostDepth };

    /// <summary>What was found, cut where it quotes more than anybody reads.</summary>
    private static Reading<TModel> Short<TModel>(Reading<TModel> reading)
        where TModel : class =>
        reading.Succeeded
            ? reading
            : new(
                null,
                [
                    .. reading.Problems.Select(problem =>
                        problem.Found.Length > MostQuoted ? problem with { Found = problem.Found[..MostQuoted] + "…" } : problem
                    ),
                ]
            );
}
