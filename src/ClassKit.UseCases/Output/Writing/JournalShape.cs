using System.Text.Json.Serialization;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// The shape of a journal, worked out when the program is built: finding it out by reflection takes a command longer than reading the file.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(Journal))]
internal sealed partial class JournalShape : JsonSerializerContext;
