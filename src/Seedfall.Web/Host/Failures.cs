using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Lawns;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Host;

/// <summary>Failures as pages in plain words, and at the terminal as one line.</summary>
internal static class Failures
{
    /// <summary>Catches what a page did not expect, and gives empty error answers a page.</summary>
    public static void UseOneLineFailures(this WebApplication app) => app.Use(async (context, next) =>
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            return;
        }
        catch (Exception e) when (!context.Response.HasStarted)
        {
            app.Logger.LogError(e, "{Method} {Path} failed", context.Request.Method, context.Request.Path);
            context.Response.Clear();
            context.Response.StatusCode = (e as BadHttpRequestException)?.StatusCode ?? StatusCodes.Status500InternalServerError;
            SecurityHeaders.Set(context.Response.Headers);
        }

        if (context.Response is { HasStarted: false, StatusCode: >= 400, ContentType: null, ContentLength: null or 0 })
        {
            await For(context.Response.StatusCode).ExecuteAsync(context);
        }
    });

    /// <summary>Refuses a request that says beforehand it is too large, so that nothing is read of it.</summary>
    public static void UseSizeLimits(this WebApplication app) => app.Use((context, next) =>
    {
        var limit = context.GetEndpoint()?.Metadata.GetMetadata<IRequestSizeLimitMetadata>()?.MaxRequestBodySize ?? Settings.FormBytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = limit;
        }

        if (context.Request.ContentLength > limit)
        {
            context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
            return Task.CompletedTask;
        }

        return next(context);
    });

    /// <summary>Opens the database and serves until stopped. A start that cannot be is one line and exit code 1.</summary>
    public static int OpenAndRun(this WebApplication app)
    {
        try
        {
            var isNew = app.Services.GetRequiredService<DatabaseOpening>().Open();
            if (isNew && app.Services.GetRequiredService<Settings>().Demo)
            {
                app.Services.GetRequiredService<DemoLoading>().Load(CancellationToken.None).GetAwaiter().GetResult();
            }

            app.Lifetime.ApplicationStarted.Register(() => app.Logger.LogInformation(
                "Seedfall is open at {Addresses}; its data lies in {Folder}", string.Join(", ", app.Urls), app.Services.GetRequiredService<DataFolder>().Root));
            app.Run();
            return 0;
        }
        catch (Exception e) when (e is StartRefusedException or IOException)
        {
            Console.Error.WriteLine($"seedfall: {e.Message}");
            return 1;
        }
    }

    private static IResult For(int status) => status switch
    {
        StatusCodes.Status400BadRequest => Page.Plain(status, "This form could not be taken", "Its token was missing or out of date, or the request was damaged. Go back, reload the page and send it again."),
        StatusCodes.Status404NotFound => Page.Plain(status, "No such page", "There is nothing at this address."),
        StatusCodes.Status405MethodNotAllowed => Page.Plain(status, "Not this way", "This address does not take such a request."),
        StatusCodes.Status413PayloadTooLarge => Page.Plain(status, "Too large", FormattableString.Invariant($"At most {Settings.UploadBytes >> 20} MB of weather files, {(Settings.PhotoBytes >> 20) - 1} MB of one photograph, or {Settings.FormBytes >> 20} MB of anything else, are taken at once."), "Nothing was saved. Compress weather files (.gz) or upload fewer years at a time; send one photograph at a time."),
        StatusCodes.Status415UnsupportedMediaType => Page.Plain(status, "Not a form", "This address takes a form."),
        >= 500 => Page.Plain(status, "Something went wrong here", "The fault is on our side and was written to the log. Nothing half-done was saved."),
        _ => Page.Plain(status, "This was refused", FormattableString.Invariant($"The request could not be answered (status {status}).")),
    };
}
