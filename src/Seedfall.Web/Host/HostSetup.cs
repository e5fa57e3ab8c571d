using System.IO.Compression;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.EntityFrameworkCore;
using Seedfall.Exchange.Paper;
using Seedfall.Web.Data;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Host;

/// <summary>What the host is made of, one method to a concern.</summary>
internal static class HostSetup
{
    public static void AddSettings(this WebApplicationBuilder builder, string[] args)
    {
        builder.Configuration.AddEnvironmentVariables("SEEDFALL_WEB_");
        builder.Configuration.AddCommandLine(args);
        var settings = Settings.From(builder.Configuration);
        builder.Services.AddSingleton(settings);
        builder.Services.AddSingleton(settings.Data);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Settings.FormBytes;
            kestrel.Listen(settings.Bind, settings.Port);
        });
    }

    public static void AddPages(this WebApplicationBuilder builder)
    {
        builder.Services.AddRazorComponents();
        builder.Services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = false);

        // Only names of this machine are answered, so that no foreign page can reach the app by pointing its own name here.
        builder.Services.Configure<HostFilteringOptions>(hosts => hosts.AllowedHosts = [.. Settings.From(builder.Configuration).Hosts]);
        builder.Services.AddHttpContextAccessor();
        builder.Services.AddAntiforgery(antiforgery =>
        {
            antiforgery.Cookie.Name = "seedfall-form";
            antiforgery.Cookie.SameSite = SameSiteMode.Strict;
            antiforgery.FormFieldName = "form-token";
            antiforgery.SuppressXFrameOptionsHeader = true;
        });
        builder.Services.Configure<FormOptions>(form =>
        {
            form.ValueCountLimit = 1000;
            form.KeyLengthLimit = 128;
            form.MultipartBodyLengthLimit = Settings.UploadBytes;
        });
        builder.Services.AddResponseCompression(compression =>
        {
            // Pages carry a form token beside text the user typed; over https that pairing must not be compressed.
            // Here the app is served over http to its own machine, where the transport hides nothing anyway.
            compression.EnableForHttps = false;
            compression.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml"];
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
        });
        builder.Services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Fastest);
        builder.Services.AddSingleton<StampedFiles>();
        builder.Services.AddSingleton<IdleRest>();
        builder.Services.AddHostedService(services => services.GetRequiredService<IdleRest>());
    }

    public static void AddStore(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddDbContextFactory<SeedfallDb>((services, options) =>
            options.UseSqlite(services.GetRequiredService<DataFolder>().ConnectionString));
        builder.Services.AddSingleton<Writer>();
        builder.Services.AddSingleton<DatabaseOpening>();
        builder.Services.AddDataProtection()
            .SetApplicationName("Seedfall")
            .PersistKeysToFileSystem(new DirectoryInfo(Settings.From(builder.Configuration).Data.Keys));
    }

    public static void UsePages(this WebApplication app)
    {
        var rest = app.Services.GetRequiredService<IdleRest>();
        app.Use((context, next) =>
        {
            rest.Woken();
            return next(context);
        });
        app.UseRouting();
        app.UseSizeLimits();
        app.UseAntiforgery();
        app.MapUnits();
        app.MapGet(StampedFiles.PaperPath, (HttpContext http) =>
        {
            http.Response.Headers.CacheControl = StampedFiles.CacheFor(http.Request);
            return Results.Text(PaperCss.Text, "text/css");
        });
    }

    public static void UseCompressedFiles(this WebApplication app)
    {
        app.UseResponseCompression();
        app.UseStaticFiles(new StaticFileOptions
        {
            OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = StampedFiles.CacheFor(file.Context.Request),
        });
    }
}
