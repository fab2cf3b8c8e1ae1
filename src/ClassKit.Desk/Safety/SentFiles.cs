using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace ClassKit.Desk.Safety;

/// <summary>Files that a page of the desk sends, one after the other as they come in: none is ever whole in memory.</summary>
/// <param name="reader">Of the request's body.</param>
/// <param name="limits">How much a browser may send.</param>
internal sealed class SentFiles(MultipartReader reader, UploadLimits limits)
{
    private const int MostBoundary = 200;

    /// <summary>The files of a request, if its first field is the desk's token; null otherwise.</summary>
    public static async Task<SentFiles?> OpenAsync(HttpContext context, DeskKeys keys, UploadLimits limits)
    {
        if (
            !MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type)
            || !type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase)
            || HeaderUtilities.RemoveQuotes(type.Boundary) is not { Length: > 0 and <= MostBoundary } boundary
        )
            return null;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = limits.HandIn;
        var reader = new MultipartReader(boundary.ToString(), context.Request.Body);
        try
        {
            return
                await reader.ReadNextSectionAsync(context.RequestAborted) is { } first
                && first.GetContentDispositionHeader() is { } field
                && field.Name == TokenForm.Field
                && DeskKeys.Same(keys.FormToken, await TextAsync(first, context.RequestAborted))
                ? new(reader, limits)
                : null;
        }
        catch (Exception failure) when (failure is InvalidDataException or IOException)
        {
            return null;
        }
    }

    /// <summary>Each file by the name that the browser gives it, which may hold folders.</summary>
    /// <exception cref="InvalidDataException">There are more than may be, or what was sent is broken off.</exception>
    public async IAsyncEnumerable<(string Name, Stream Content)> Each(
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation
    )
    {
        var count = 0;
        while (await reader.ReadNextSectionAsync(cancellation) is { } section)
        {
            if (section.GetContentDispositionHeader() is not { } part || !part.IsFileDisposition())
                continue;
            var name = HeaderUtilities.RemoveQuotes(part.FileNameStar.HasValue ? part.FileNameStar : part.FileName).ToString();
            if (name.Length == 0)
                continue;
            if (++count > limits.Files)
                throw new InvalidDataException($"more than {limits.Files} files");
            yield return (name, section.Body);
        }
    }

    /// <summary>The first file, whole, and nothing else; null if there is none.</summary>
    /// <param name="most">More bytes than this are not kept: the file has no content then.</param>
    /// <param name="cancellation">Nobody waits any more.</param>
    public async Task<(string Name, byte[]? Content)?> OnlyAsync(int most, CancellationToken cancellation)
    {
        await foreach (var (name, content) in Each(cancellation))
        {
            var bytes = new MemoryStream();
            var part = new byte[1 << 16];
            while (await content.ReadAsync(part, cancellation) is > 0 and var count)
            {
                if (bytes.Length + count > most)
                    return (name, null);
                bytes.Write(part, 0, count);
            }
            return (name, bytes.ToArray());
        }
        return null;
    }

    /// <summary>A token's text, and never more of it than a token has.</summary>
    private static async Task<string> TextAsync(MultipartSection section, CancellationToken cancellation)
    {
        var bytes = new byte[256];
        var length = await section.Body.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancellation);
        return System.Text.Encoding.ASCII.GetString(bytes, 0, length);
    }
}
