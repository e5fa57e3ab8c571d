using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Seedfall.Web.Layout;

/// <summary>A Razor component as a whole answer, rendered before the first byte goes out.</summary>
internal static class Page
{
    public static RazorComponentResult<T> Of<T>(object? parameters = null, int status = StatusCodes.Status200OK)
        where T : IComponent =>
        new(parameters ?? new { }) { StatusCode = status, PreventStreamingRendering = true };

    /// <summary>A page that says what went wrong in plain words.</summary>
    public static RazorComponentResult<PlainPage> Plain(int status, string title, params string[] sentences) =>
        Of<PlainPage>(new { Title = title, Sentences = (IReadOnlyList<string>)sentences }, status);

    public static RazorComponentResult<PlainPage> NoSuchLawn() =>
        Plain(StatusCodes.Status404NotFound, "No such lawn", "There is no lawn at this address. It may have been removed.");
}
