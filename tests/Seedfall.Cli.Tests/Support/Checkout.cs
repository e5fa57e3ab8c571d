namespace Seedfall.Cli.Tests.Support;

/// <summary>Where the sources lie, found by walking up from the test's own folder.</summary>
internal static class Checkout
{
    internal static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("no folder above the tests holds Seedfall.slnx");
    }
}
