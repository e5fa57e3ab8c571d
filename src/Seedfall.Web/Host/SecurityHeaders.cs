namespace Seedfall.Web.Host;

/// <summary>Headers on every answer. Nothing inline, nothing from elsewhere, no framing.</summary>
internal static class SecurityHeaders
{
    public const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; form-action 'self'; " +
        "frame-ancestors 'none'; base-uri 'none'; connect-src 'self'; manifest-src 'self'; worker-src 'self'";

    /// <summary>For the self-contained sheets, which carry their own style and no script.</summary>
    public const string PaperPolicy =
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'none'; base-uri 'none'; form-action 'none'; sandbox";

    /// <summary>For pictures people sent: should one ever be opened as a page, it can do nothing.</summary>
    public const string PicturePolicy = "default-src 'none'; frame-ancestors 'none'; sandbox";

    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        Set(context.Response.Headers);
        context.Response.OnStarting(() =>
        {
            // Set last, so that whoever knows better (a stamped file, a form token) goes first.
            context.Response.Headers.CacheControl = context.Response.Headers.CacheControl is { Count: > 0 } known ? known : "no-store";
            return Task.CompletedTask;
        });
        return next(context);
    });

    /// <summary>On a page where a note may be spoken.</summary>
    public static void AllowSpeech(IHeaderDictionary headers) => headers["Permissions-Policy"] = Permissions("(self)");

    private static string Permissions(string microphone) => $"geolocation=(self), camera=(self), microphone={microphone}, payment=(), usb=()";

    public static void Set(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = PagePolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = Permissions("()");
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
