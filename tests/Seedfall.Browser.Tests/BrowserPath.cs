namespace Seedfall.Browser.Tests;

/// <summary>The Chromium-family browser of this machine.</summary>
internal static class BrowserPath
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];

    /// <summary>How it is started: at home nowhere but here, and drawing without a graphics process, which a machine without a screen only imitates.</summary>
    public static IReadOnlyList<string> Arguments { get; } =
    [
        .. Environment.UserName == "root" ? (string[])["--no-sandbox"] : [],
        "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-gpu", "--disable-software-rasterizer",
    ];

    /// <summary>The one SEEDFALL_BROWSER names, else the first on the path; throws with one line where there is none.</summary>
    public static string Find()
    {
        if (Environment.GetEnvironmentVariable("SEEDFALL_BROWSER") is { Length: > 0 } named)
        {
            return File.Exists(named) ? named : throw new InvalidOperationException($"SEEDFALL_BROWSER names {named}, which does not exist");
        }

        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return folders.SelectMany(f => Names.Select(n => Path.Combine(f, n))).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("no Chromium-family browser found: install chromium, or set SEEDFALL_BROWSER to its path (./dev test installs one)");
    }
}
