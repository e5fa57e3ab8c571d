namespace Seedfall.Web.Host;

/// <summary>Headers on every answer. Nothing inline, nothing from elsewhere, no framing.</summary>
internal static class SecurityHeaders
{
    public const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; form-action 'self'; " +
        "frame-ancestors 'none'; base-uri 'none'; connect-src 'self'";

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

    public static void Set(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = PagePolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "geolocation=(self), camera=(self), microphone=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
