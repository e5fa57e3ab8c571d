namespace Seedfall.Web.Host;

/// <summary>
/// What stands for a form token where a phone delivers later than any token lives: a header no foreign page can set without asking,
/// and a request that says it comes from here.
/// </summary>
internal static class ApiGuard
{
    /// <summary>Any value will do; that it is there is what counts.</summary>
    public const string Header = "X-Seedfall";

    /// <summary>Refuses what does not come from the app's own pages.</summary>
    public static RouteGroupBuilder Guarded(this RouteGroupBuilder group)
    {
        group.AddEndpointFilter(async (context, next) => Problem(context.HttpContext.Request) is { } problem
            ? ApiAnswer.Refused(StatusCodes.Status403Forbidden, problem)
            : await next(context));
        return group;
    }

    private static string? Problem(HttpRequest request)
    {
        if (HttpMethods.IsGet(request.Method))
        {
            return null;
        }

        if (!request.Headers.ContainsKey(Header))
        {
            return $"the header {Header} is needed";
        }

        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0 && site != "same-origin")
        {
            return "only the app's own pages may send this";
        }

        var origin = request.Headers.Origin.ToString();
        return origin.Length > 0 && origin != $"{request.Scheme}://{request.Host}" ? "only the app's own pages may send this" : null;
    }
}

/// <summary>Answers of the addresses a script talks to.</summary>
internal static class ApiAnswer
{
    public static IResult Refused(int status, params string[] problems) => Results.Json(new { problems }, statusCode: status);
}
