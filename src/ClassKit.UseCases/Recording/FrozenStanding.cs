using System.Diagnostics;
using ClassKit.Terms.Grades;

namespace ClassKit.UseCases.Recording;

/// <summary>How a work stood, in the words that frozen terms on disks hold: they stay, whatever the program calls it.</summary>
internal static class FrozenStanding
{
    public const string Dropped = "Dropped";

    public static string Of(Standing standing) =>
        standing switch
        {
            Standing.Counts => "Counts",
            Standing.Dropped => Dropped,
            Standing.Excused => "Excused",
            Standing.LeftOut => "LeftOut",
            Standing.NotDue => "NotDue",
            Standing.Missing => "Missing",
            _ => throw new UnreachableException($"No word for {standing}."),
        };
}
