using Seedfall.Engine.Workings;

namespace Seedfall.Web.Layout;

/// <summary>What the person looking prefers: which unit system stands first. Kept in a cookie of this browser only.</summary>
internal static class Viewer
{
    private const string Cookie = "seedfall-units";

    public static UnitSystem Of(HttpContext? context) =>
        context?.Request.Cookies[Cookie] == "metric" ? UnitSystem.Metric : UnitSystem.UsCustomary;

    public static void MapUnits(this WebApplication app) => app.MapPost("/units", (HttpContext context, IFormCollection form) =>
    {
        var system = form["system"] == "metric" ? "metric" : "us";
        context.Response.Cookies.Append(Cookie, system, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, MaxAge = TimeSpan.FromDays(365), IsEssential = true });
        var back = form["back"].ToString();
        return IsLocal(back) ? Results.LocalRedirect(back) : Results.LocalRedirect("/");
    });

    private static bool IsLocal(string path) =>
        path.StartsWith('/') && !path.StartsWith("//", StringComparison.Ordinal) && !path.StartsWith("/\\", StringComparison.Ordinal) && !path.Any(char.IsControl);
}
