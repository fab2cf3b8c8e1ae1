using ClassKit.Desk.Frame;
using ClassKit.Desk.Serving;
using ClassKit.Wording.Counts;
using Microsoft.AspNetCore.Http;

namespace ClassKit.Desk.Returns;

/// <summary>What is said where not all of a hand-in was kept.</summary>
internal static class HandedInPage
{
    /// <summary>Goes on where all was kept, or says what was not.</summary>
    /// <param name="visit">Who hands in.</param>
    /// <param name="handedIn">How it went.</param>
    /// <param name="next">What comes after.</param>
    public static Task After(Visit visit, HandedIn handedIn, Func<Task> next)
    {
        if (handedIn is HandedIn.Whole)
            return next();
        if (handedIn is HandedIn.NotWritten)
            visit.Context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
        return visit.Show<WordPage>((nameof(WordPage.Title), Title(handedIn)), (nameof(WordPage.Words), Words(handedIn)));
    }

    private static string Title(HandedIn handedIn) =>
        handedIn is HandedIn.NotWritten ? "Not all of it could be kept" : "Not all of it came through";

    private static string Words(HandedIn handedIn)
    {
        var kept = $"What came whole is kept ({Counted.Of(handedIn.New, "new file")}), and nothing else.";
        return handedIn is HandedIn.NotWritten(_, var why)
            ? $"The next file could not be written: {why} {kept} Look whether there is room and whether the folder may be written to, and hand everything in again: what is there already is not kept twice."
            : $"{kept} Hand everything in again: what is there already is not kept twice. Take smaller lots if it was more than a gigabyte or many thousand files.";
    }
}
