namespace Seedfall.Web.Forms;

/// <summary>Files sent with a form.</summary>
internal static class Uploads
{
    /// <summary>The whole file as bytes; what may be sent is bounded by the limit of its address.</summary>
    /// <exception cref="EndOfStreamException">Fewer bytes came than the form says.</exception>
    public static async Task<byte[]> Bytes(this IFormFile file, CancellationToken cancellation)
    {
        var bytes = new byte[file.Length];
        await using var stream = file.OpenReadStream();
        await stream.ReadExactlyAsync(bytes, cancellation);
        return bytes;
    }
}
