using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Pages;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Observing;

/// <summary>
/// Makes the page that teams type their measurements into, at the bench and without a network. The workbook of the same lies in the
/// lesson's pack.
/// </summary>
public static class MakeObservationForm
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "observe";

    private const string Page = "observations-form.html";

    /// <summary>The request for a lesson and a class, or everything that is wrong with their files.</summary>
    /// <param name="lesson">The lesson's folder.</param>
    /// <param name="profile">The class profile; null for a class of usual size.</param>
    public static Reading<ObservationFormRequest> Read(string lesson, string? profile)
    {
        var pack = BuildPack.Read(lesson, profile);
        return pack.Succeeded ? new(new(pack.Model), []) : new(null, pack.Problems);
    }

    /// <summary>Makes the form.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<ObservationForm> Run(ObservationFormRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.LayingOut);
        return ComputedPack.Build(request.Pack.Lesson, request.Pack.Profile).TryGet(out var computed, out var why)
            ? new(new(computed), [])
            : new(null, [new(request.Pack.Source, null, why.Message.TrimEnd('.'), why.Remedy)]);
    }

    /// <summary>The file, made when it is written.</summary>
    public static Produced Write(ObservationForm form) =>
        new([OutputFile.OfText(Page, () => HtmlPages.ObservationForm(form))], [], []) { Open = [Page] };
}
