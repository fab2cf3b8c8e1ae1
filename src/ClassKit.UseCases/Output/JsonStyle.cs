using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;

namespace ClassKit.UseCases.Output;

/// <summary>How ClassKit writes and reads JSON: camel case, indented, accents as they are, nothing missing.</summary>
internal static class JsonStyle
{
    public static JsonSerializerOptions Options { get; } =
        new(JsonSerializerDefaults.Web)
        {
            WriteIndented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
            NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.Strict,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
            Converters = { new PlainDecimals() },
        };

    /// <summary>The same for documents whose shape is known when the program is built.</summary>
    public static JsonSerializerOptions For(IJsonTypeInfoResolver shape) => new(Options) { TypeInfoResolver = shape };

    /// <summary>Writes as it goes: what the document makes on demand is never all in memory.</summary>
    public static void Write<T>(Stream stream, T document, JsonSerializerOptions options)
    {
        JsonSerializer.Serialize(stream, document, options);
        stream.WriteByte((byte)'\n');
    }

    public static string Write<T>(T document, JsonSerializerOptions options) => JsonSerializer.Serialize(document, options) + "\n";
}
