using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace ClassKit.Desk.Safety;

/// <summary>Reads a form that a page of the desk sent, if it brings the desk's token along.</summary>
internal static class TokenForm
{
    /// <summary>The field of every form that holds the token.</summary>
    public const string Field = "token";

    private const int MostFields = 20_000;

    /// <summary>The form; null if it is none of ours, or larger than a form may be.</summary>
    public static async Task<IFormCollection?> ReadAsync(HttpRequest request, DeskKeys keys, UploadLimits limits)
    {
        if (
            request.ContentType is not { } type
            || !type.StartsWith("application/x-www-form-urlencoded", StringComparison.OrdinalIgnoreCase)
        )
            return null;
        try
        {
            var form = await new FormFeature(
                request,
                new()
                {
                    ValueCountLimit = MostFields,
                    ValueLengthLimit = limits.Form,
                    BufferBody = false,
                }
            ).ReadFormAsync(request.HttpContext.RequestAborted);
            return form[Field] is [var token] && DeskKeys.Same(keys.FormToken, token) ? form : null;
        }
        catch (Exception failure) when (failure is InvalidDataException or BadHttpRequestException)
        {
            return null;
        }
    }
}
