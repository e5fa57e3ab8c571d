using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>What lets the phone work without a signal: the worker, and the page that shows what is kept.</summary>
internal static class PhoneEndpoints
{
    public static void MapPhone(this WebApplication app)
    {
        app.MapGet("/day", () => Page.Of<OnPhonePage>());
        app.MapGet("/sw.js", (PhoneFiles files, HttpContext http) =>
        {
            http.Response.Headers.CacheControl = "no-cache";
            return files.Worker is { } worker ? Results.Text(worker, "text/javascript", Encoding.UTF8) : Results.NotFound();
        });
    }
}

/// <summary>The files a kept sheet is shown with, and the version that stands for all of them together.</summary>
internal sealed class PhoneFiles(StampedFiles files, IWebHostEnvironment environment)
{
    /// <summary>Addresses with their stamps.</summary>
    public IReadOnlyList<string> Shell { get; } = [files["/notebook.css"], files["/day.css"], files["/built/day.js"], files["/seed.svg"]];

    /// <summary>Changes whenever one of them does.</summary>
    public string Version => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', Shell))))[..12];

    /// <summary>The worker with its version and files before it; null where the scripts were not built.</summary>
    public string? Worker
    {
        get
        {
            var file = environment.WebRootFileProvider.GetFileInfo("/built/day-worker.js");
            if (!file.Exists)
            {
                return null;
            }

            using var reader = new StreamReader(file.CreateReadStream(), Encoding.UTF8);
            var facts = JsonSerializer.Serialize(new { version = Version, shell = Shell });
            return $"self.seedfall={facts};\n{reader.ReadToEnd()}";
        }
    }
}
