using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// The shape of grades.json, worked out when the program is built: finding it out by reflection takes a command longer than reading the
/// file.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(GradesDocument))]
[JsonSerializable(typeof(JsonElement))]
[JsonSerializable(typeof(double))]
[JsonSerializable(typeof(bool))]
[JsonSerializable(typeof(JsonObject))]
internal sealed partial class GradesShape : JsonSerializerContext;
