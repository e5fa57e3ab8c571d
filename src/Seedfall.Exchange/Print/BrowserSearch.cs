namespace Seedfall.Exchange.Print;

/// <summary>Finds a Chromium-family browser on the machine.</summary>
public static class BrowserSearch
{
    /// <summary>The variable that names the browser, before any other is looked for.</summary>
    public const string Variable = "SEEDFALL_BROWSER";

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "microsoft-edge-stable", "chrome"];

    private static readonly string[] MacBundles =
    [
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    /// <summary>Path of the browser, or null where there is none or it cannot be driven on this system.</summary>
    public static string? Find() => Find(Environment.GetEnvironmentVariable, File.Exists);

    internal static string? Find(Func<string, string?> variable, Func<string, bool> exists)
    {
        if (OperatingSystem.IsWindows())
        {
            return null;
        }

        if (variable(Variable) is { Length: > 0 } named)
        {
            return exists(named) ? named : null;
        }

        var folders = (variable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var candidates = Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name)));
        return (OperatingSystem.IsMacOS() ? candidates.Concat(MacBundles) : candidates).FirstOrDefault(exists);
    }
}
