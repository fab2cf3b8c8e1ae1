using System.Text.Json;
using System.Text.Json.Serialization;

namespace ClassKit.UseCases.Output;

/// <summary>Writes decimals without the zeros at their end: 6 and not 6.00, whatever arithmetic they come from.</summary>
internal sealed class PlainDecimals : JsonConverter<decimal>
{
    /// <summary>Dividing by a one with all its decimals leaves as few as the number needs.</summary>
    private const decimal One = 1.0000000000000000000000000000m;

    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDecimal();

    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) => writer.WriteNumberValue(value / One);
}
