using System.Diagnostics;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>What became of a returned item that something went wrong with, for the student and for those who mend programs.</summary>
/// <remarks>What an exception says itself names places on the instructor's machine, and is never passed on.</remarks>
internal static class ItemFailure
{
    /// <summary>What happened.</summary>
    public static Refusal Why(Exception failure) =>
        new Refusal.Unopened(
            failure switch
            {
                UnauthorizedAccessException => OpeningFault.NotAllowed,
                FileNotFoundException or DirectoryNotFoundException => OpeningFault.Gone,
                PathTooLongException => OpeningFault.LongName,
                IOException => OpeningFault.Disk,
                _ => OpeningFault.OurError,
            }
        );

    /// <summary>Which exception came from where, if the mistake is ours; null for what the system refused.</summary>
    public static string? Fault(Exception failure) =>
        failure is IOException or UnauthorizedAccessException ? null : $"{failure.GetType().Name} in {Where(failure)}";

    private static string Where(Exception failure)
    {
        var methods = new StackTrace(failure, fNeedFileInfo: false)
            .GetFrames()
            .Select(frame => frame.GetMethod())
            .OfType<System.Reflection.MethodBase>();
        var own = methods.FirstOrDefault(method =>
            method.DeclaringType?.Namespace?.StartsWith(nameof(ClassKit), StringComparison.Ordinal) == true
        );
        return own is null ? "an unknown place" : $"{own.DeclaringType!.Name}.{own.Name}";
    }
}
