using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>One row of an answer, read by the place of the column.</summary>
internal readonly struct Row(SqliteDataReader reader)
{
    public string Text(int column) => reader.GetString(column);

    public string? TextOrNull(int column) => reader.IsDBNull(column) ? null : reader.GetString(column);

    public long Number(int column) => reader.GetInt64(column);

    public int Whole(int column) => reader.GetInt32(column);

    public int? WholeOrNull(int column) => reader.IsDBNull(column) ? null : reader.GetInt32(column);

    public decimal Points(int column) => decimal.Parse(reader.GetString(column), CultureInfo.InvariantCulture);

    public decimal? PointsOrNull(int column) => reader.IsDBNull(column) ? null : Points(column);

    public DateOnly Day(int column) => DateOnly.ParseExact(reader.GetString(column), Values.DayFormat, CultureInfo.InvariantCulture);

    public DateOnly? DayOrNull(int column) => reader.IsDBNull(column) ? null : Day(column);

    public DateTimeOffset Moment(int column) => DateTimeOffset.ParseExact(reader.GetString(column), "O", CultureInfo.InvariantCulture);

    /// <summary>A long text, unpacked.</summary>
    public string Unpacked(int column) => Packed.Text(reader.GetFieldValue<byte[]>(column));

    public string? UnpackedOrNull(int column) => reader.IsDBNull(column) ? null : Unpacked(column);

    /// <summary>As it is stored: null, a text, a whole number or bytes.</summary>
    public object? Raw(int column) => reader.IsDBNull(column) ? null : reader.GetValue(column);
}
