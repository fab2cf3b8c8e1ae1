using System.Text.Json.Serialization;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// The shape of dealt.json, worked out when the program is built: finding it out by reflection takes a command longer than reading the
/// file.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(DealtDocument))]
internal sealed partial class DealtShape : JsonSerializerContext;
