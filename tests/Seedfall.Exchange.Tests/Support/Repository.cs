namespace Seedfall.Exchange.Tests.Support;

/// <summary>Files of the checkout the tests run in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>True when a published file may be rewritten from the code instead of compared.</summary>
    public static bool AcceptGolden => Environment.GetEnvironmentVariable("SEEDFALL_ACCEPT_GOLDEN") == "1";

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests must run inside the checkout");
    }
}
